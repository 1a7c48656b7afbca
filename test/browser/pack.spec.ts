import { make, openLabelKitchen, type LabelKitchen } from '../support/workshop/label-kitchen';
import { openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: LabelKitchen;
let pieceLots: string[];
let box: string;

/** What earlier jobs made: two lots of pieces. */
const makeBefore = async (): Promise<void> => {
  const { service } = story;
  const dark = await kitchen.receive(kitchen.dark, '5000');
  const cream = await kitchen.receive(kitchen.cream, '1000');
  const hazelnuts = await kitchen.receive(kitchen.hazelnuts, '1000');
  const ganache = await make(
    service,
    kitchen.ganache,
    [
      { lotCode: cream, quantity: '400' },
      { lotCode: dark, quantity: '450' },
      { lotCode: hazelnuts, quantity: '150' },
    ],
    { outputs: [{ quantity: '1000' }] },
  );
  const pieces = () =>
    make(
      service,
      kitchen.piece,
      [
        { lotCode: dark, quantity: '120', role: 'shell' },
        { lotCode: ganache, quantity: '100', role: 'filling' },
      ],
      { outputs: [{ quantity: '20' }] },
    );
  pieceLots = [await pieces(), await pieces()];
  const item = await service.as.maker.get(`/items/${kitchen.box}`).expect(200);
  box = (item.body as { name: string }).name;
};

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openLabelKitchen(story.service);
  await makeBefore();
});
afterAll(() => story.end());

const dialog = () => story.page.getByRole('dialog');

const drawPieces = async (lotCode: string, quantity: string): Promise<void> => {
  const { page } = story;
  await scan(page, lotCode);
  await dialog()
    .getByLabel(/^Quantity/)
    .fill(quantity);
  await dialog().getByRole('button', { name: 'Weigh in' }).click();
  await dialog().waitFor({ state: 'detached' });
};

describe('a maker who packs', () => {
  step('starts ten boxes and scans the pieces in from two lots', async () => {
    const { page } = story;
    await page.goto('/packing');
    await page.getByRole('link', { name: 'Start packing' }).click();
    await page.getByRole('combobox', { name: /^What is made/ }).click();
    await page.getByRole('option', { name: box }).click();
    await page.getByLabel(/^How much/).fill('10');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: box }).waitFor();
    await page.getByText('of 40').waitFor();
    await drawPieces(pieceLots[0] ?? '', '20');
    await drawPieces(pieceLots[1] ?? '', '20');
    await page.getByText('enough').waitFor();
  });

  step('splits where the lot of the piece changed, so that a recall stays small', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Split at the change' }).click();
    await dialog()
      .getByLabel(/^Boxes packed/)
      .fill('10');
    await dialog()
      .getByText(/^Boxes 1 to 5: /)
      .waitFor();
    await dialog()
      .getByText(/^Boxes 6 to 10: /)
      .waitFor();
    await dialog().getByRole('button', { name: 'Split at the change' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.goto('/packing');
    const open = page.getByRole('region', { name: 'In hand' }).getByRole('row');
    await open.filter({ hasText: box }).filter({ hasText: 'part 1 of 2' }).waitFor();
    await open.filter({ hasText: box }).filter({ hasText: 'part 2 of 2' }).waitFor();
  });

  step('finishes one run of boxes as a lot of its own', async () => {
    const { page } = story;
    await page.getByRole('region', { name: 'In hand' }).getByRole('link').first().click();
    await page
      .getByRole('link', { name: /^Packing/ })
      .and(page.locator('[aria-current]'))
      .waitFor();
    await page.getByRole('button', { name: 'Finish', exact: true }).click();
    await dialog()
      .getByLabel(/^What came out/)
      .fill('5');
    await dialog().getByRole('button', { name: 'Finish' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByRole('region', { name: 'Made' }).getByRole('link', { name: 'Label' }).click();
    await page.getByRole('heading', { level: 1, name: `Label of ${box}` }).waitFor();
  });

  step('reads the list of what is really inside, allergens emphasised', async () => {
    const { page } = story;
    const declared = page.getByRole('region', { name: 'Ingredients' });
    await declared
      .getByText(/hazelnuts/)
      .first()
      .waitFor();
    const bold = await declared.locator('strong, b').allTextContents();
    expect(bold.join(' ')).toMatch(/hazelnuts/i);
    expect(bold.join(' ')).toMatch(/milk|cream/i);
    await page.getByText(/When in doubt about an allergen, don’t print/).waitFor();
  });

  step('is told what keeps the label back, and by which way out', async () => {
    const { page } = story;
    const checks = page.getByRole('region', { name: 'What was checked' });
    await checks.getByText(/needs the workshop’s name and an address/).waitFor();
    await checks.getByText(/Nutrition can’t be declared/).waitFor();
    await page.getByRole('button', { name: 'Print and put on record' }).click();
    await page.getByRole('alert').getByText('This label can’t be printed yet').waitFor();
    expect(await page.getByRole('link', { name: 'Open the PDF' }).count()).toBe(0);
  });
});
