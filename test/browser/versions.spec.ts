import { addRecipe, type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { accessibilityFaults } from './support/accessibility';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  await addRecipe(story.service.databaseUrl, {
    itemId: kitchen.ganache,
    yieldMassG: '1000',
    shelfLifeDays: 21,
    lines: [
      [kitchen.cream, '450', 'base'],
      [kitchen.couverture, '600', 'base'],
    ],
  });
});
afterAll(() => story.end());

describe('a maker with two versions of a recipe', () => {
  step('sees them side by side, the older on the left', async () => {
    const { page } = story;
    await page.goto(`/recipes/${kitchen.ganache}`);
    const compare = page.getByRole('region', { name: 'Compare versions' });
    await compare.getByLabel('Compare with').selectOption({ label: 'Version 1' });
    const cream = compare.getByRole('row').filter({ hasText: /^Cream/ });
    await cream.getByText('changed').waitFor();
    expect(await cream.getByRole('cell').allInnerTexts()).toEqual([
      expect.stringContaining('Cream'),
      expect.stringMatching(/^480\sg/),
      expect.stringMatching(/^450\sg/),
      expect.stringContaining('changed'),
    ]);
    await compare.getByRole('row').filter({ hasText: /^Tea/ }).getByText('left out').waitFor();
    const life = compare.getByRole('row').filter({ hasText: 'shelf life, days' });
    expect((await life.getByRole('cell').allInnerTexts()).slice(1)).toEqual(['30', '21']);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('scales a box through its pieces and its filling, in whole trays', async () => {
    const { page } = story;
    await page.goto(`/recipes/${kitchen.box}`);
    const scale = page.getByRole('region', { name: 'Scale it' });
    await scale.getByLabel(/^To how many/).fill('10');
    const piece = scale.getByRole('region', { name: /^Tea dome/ });
    await piece.getByText('2 whole trays').waitFor();
    const carton = scale
      .getByRole('region', { name: 'All from the store' })
      .getByRole('row')
      .filter({ hasText: /^Carton/ });
    await carton.getByText(/^10\spc$/).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('is refused half a tray, in words', async () => {
    const { page } = story;
    await page.goto(`/recipes/${kitchen.piece}`);
    const scale = page.getByRole('region', { name: 'Scale it' });
    await scale.getByRole('radio', { name: 'trays' }).check();
    await scale.getByLabel(/^To how many/).fill('1.5');
    await scale.getByRole('alert').waitFor();
    await scale.getByLabel(/^To how many/).fill('3');
    await scale.getByText('3 whole trays').first().waitFor();
  });
});
