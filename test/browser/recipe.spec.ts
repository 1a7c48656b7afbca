import type { RunningService } from '../support/service/test-service';
import { openDemoStory, step, type Story } from './support/story';

jest.setTimeout(600_000);

let story: Story<RunningService>;

beforeAll(async () => {
  story = await openDemoStory('maker');
}, 600_000);
afterAll(() => story.end());

const addLine = async (item: string, grams: string): Promise<void> => {
  const { page } = story;
  await page.getByRole('button', { name: 'Add a line' }).click();
  const line = page.getByRole('region', { name: 'What goes in' }).getByRole('listitem').last();
  await line.getByRole('combobox', { name: 'Component' }).click();
  await line.getByRole('combobox', { name: 'Component' }).fill(item);
  await page.getByRole('option', { name: item, exact: true }).click();
  await line.getByLabel(/^Quantity/).fill(grams);
};

const analysis = () => story.page.getByRole('complementary', { name: 'What it is like' });

describe('a maker who writes a recipe', () => {
  step('starts a filling of their own', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Recipes' }).click();
    await page.getByRole('button', { name: /^Add a filling/ }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel(/^Name/).fill('Orange ganache');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('heading', { level: 1, name: 'Orange ganache' }).waitFor();
    await page.getByText('the analysis follows while you write').waitFor();
  });

  step('sees what it is like while writing: make-up, water activity with its error', async () => {
    await addLine('Cream 35 %', '1000');
    await addLine('Dark couverture 64 %', '1500');
    await addLine('Glucose syrup DE 40', '200');
    await analysis().getByText('2.7 kg').first().waitFor();
    await analysis().getByText('Make-up of 100 g').waitFor();
    await analysis()
      .getByText(/^Water activity/)
      .first()
      .waitFor();
    await analysis()
      .getByText(/± ?0\.03/)
      .first()
      .waitFor();
  });

  step('is told the allergens and which item brings them', async () => {
    const milk = analysis()
      .getByRole('listitem')
      .filter({ hasText: /milk\s*from/ });
    await milk.getByText('contains').waitFor();
    await milk.getByText(/from .*Cream 35 %/).waitFor();
  });

  step('is told the cost per kilogram and what is out of the usual range', async () => {
    await analysis()
      .getByText(/€\d+\.\d+ per kg/)
      .waitFor();
    await analysis()
      .getByText(/Over 30 % of the hard fat is milk fat/)
      .waitFor();
  });

  step('sees the estimate change with the recipe', async () => {
    const { page } = story;
    const before = await analysis().innerText();
    await addLine('Sorbitol powder', '150');
    await page.waitForFunction(
      (text) => document.querySelector('aside')?.innerText !== text,
      before,
    );
    await analysis().getByText('2.85 kg').first().waitFor();
  });

  step('is refused a life that nothing proves, told the rule and the way out', async () => {
    const { page } = story;
    await page.getByLabel(/^Weight after all losses/).fill('2800');
    await page.getByLabel('Shelf life (Days)').fill('28');
    await page.getByLabel('Stands on').selectOption({ label: 'chosen' });
    await page.getByRole('button', { name: 'Save this version' }).click();
    const refusal = page.getByRole('alert');
    await refusal.getByText('Longer than its limits allow').waitFor();
    await refusal.getByText(/Shorten it, or name the test that proves it/).waitFor();
  });

  step('states a shorter life and a check point, and saves version 1', async () => {
    const { page } = story;
    await page.getByLabel('Shelf life (Days)').fill('3');
    await page.getByRole('button', { name: 'Add a step' }).click();
    await page.getByLabel('Title').fill('Boil');
    await page.getByRole('button', { name: 'Add a check point' }).click();
    await page.getByLabel(/^Lowest/).fill('82');
    await page.getByRole('button', { name: 'Save this version' }).click();
    await page.getByLabel('Version on screen').selectOption({ label: 'Version 1' });
    await page.getByRole('link', { name: 'Start a batch' }).waitFor();
  });
});
