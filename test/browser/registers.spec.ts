import { addItem } from '../support/workshop/fixtures';
import { accessibilityFaults } from './support/accessibility';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let columns: string;

beforeAll(async () => {
  story = await openStory('maker');
  await addItem(story.service, { name: 'Cream', kind: 'ingredient' });
  const saved = await story.device.context.request.get('/api/imports/ingredients');
  columns = (await saved.text()).split(/\r?\n/)[0] ?? '';
});
afterAll(() => story.end());

const choose = (...lines: readonly string[]): Promise<void> =>
  story.page.getByLabel('CSV file').setInputFiles({
    name: 'ingredients.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from([columns, ...lines].join('\n')),
  });

const row = (name: string, flag: string): string =>
  columns
    .split(',')
    .map((column) => (column === 'name' ? name : column === 'perishable' ? flag : ''))
    .join(',');

const known = async (name: string): Promise<boolean> => {
  const answer = await story.service.as.maker.get('/items?limit=100').expect(200);
  return (answer.body as { items: { name: string }[] }).items.some((item) => item.name === name);
};

describe('a maker who takes a register in from a file', () => {
  step('finds the way in the workshop’s room, and the register as it is', async () => {
    const { page } = story;
    await page.goto('/workshop');
    await page.getByRole('link', { name: 'Take registers in' }).click();
    await page.getByRole('heading', { level: 1, name: 'Take registers in' }).waitFor();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save Ingredients as CSV' }).click();
    expect((await saving).suggestedFilename()).toBe('ingredients.csv');
  });

  step('is told every problem by its line, and offered nothing to write', async () => {
    const { page } = story;
    await choose(row('Raspberry purée', 'maybe'), row('Mango purée', 'yes'), row('', 'no'));
    await page.getByText('2 problems: nothing is written').waitFor();
    const problems = page.getByRole('table', { name: 'Problems' });
    const lines = problems.getByRole('row').locator('td:first-child');
    expect(await lines.allInnerTexts()).toEqual(['2', '4']);
    expect(await page.getByRole('button', { name: 'Write these lines' }).count()).toBe(0);
    expect(await known('Mango purée')).toBe(false);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('puts the file right, sees what would happen, and writes it', async () => {
    const { page } = story;
    await choose(row('Raspberry purée', 'no'), row('Mango purée', 'yes'));
    await page.getByText('The file is clean; nothing is written yet').waitFor();
    expect(await known('Mango purée')).toBe(false);
    await page.getByRole('button', { name: 'Write these lines' }).click();
    await page.getByText(/Written$/).waitFor();
    expect(await known('Mango purée')).toBe(true);
    expect(await page.getByRole('button', { name: 'Write these lines' }).count()).toBe(0);
  });

  step('finds the command for a backup beside the exports', async () => {
    await story.page.goto('/workshop/data');
    await story.page.getByText(/^npm run backup --/).waitFor();
  });
});
