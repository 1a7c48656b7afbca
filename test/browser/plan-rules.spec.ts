import type { RunningService } from '../support/service/test-service';
import { accessibilityFaults } from './support/accessibility';
import { rowsOf } from './support/demo-facts';
import { dayIn, makePlan, writeOrder } from './support/planning';
import { openDemoStory, pick, step, type Story } from './support/story';

jest.setTimeout(300_000);

let story: Story<RunningService>;
const faults: string[] = [];

beforeAll(async () => {
  story = await openDemoStory('maker');
  story.page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
}, 600_000);
afterAll(() => story.end());

const room = (place: string, name: string) =>
  story.page
    .getByRole('navigation', { name: place, exact: true })
    .getByRole('link', { name, exact: true })
    .click();
const register = (name: string) => story.page.getByRole('table', { name, exact: true });

const save = async (): Promise<void> => {
  await story.page.getByRole('button', { name: 'Save', exact: true }).click();
  await story.page.getByRole('status').filter({ hasText: 'Saved.' }).waitFor();
};

const fact = async (name: string): Promise<number> => {
  const shown = story.page.locator('.fact').filter({ hasText: name });
  return Number(await shown.locator('dd').innerText());
};

/** What is expected of a box in two weeks, and what it would be without any season. */
const foretell = async (): Promise<{ expected: number; ordinary: number; rows: number[] }> => {
  await room('Out', 'Counter forecast');
  await pick(story.page, /^What/, 'Box of nine, assorted');
  await story.page.getByText('An ordinary open day').waitFor();
  await story.page.getByRole('button', { name: 'Table', exact: true }).click();
  const rows = (await rowsOf(register('Expected at the counter'))).map(([, count]) =>
    Number(count),
  );
  const ordinary = (await fact('An ordinary open day')) * rows.length;
  return { expected: await fact('In all these days'), ordinary, rows };
};

describe('a maker who sets up how the workshop plans', () => {
  step('begins on Today without a fault in the console', async () => {
    const { page } = story;
    await page.goto('/');
    await page.getByRole('region', { name: 'To start' }).waitFor();
    await page.waitForLoadState('networkidle');
    expect(faults).toEqual([]);
  });

  step('reads what the counter is expected to sell, as bars and as a table', async () => {
    const { page } = story;
    await page.getByRole('link', { name: /^Out/ }).click();
    const { expected, rows } = await foretell();
    expect(expected).toBeGreaterThan(0);
    expect(rows.reduce((total, count) => total + count, 0)).toBeCloseTo(expected, 0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('is told at the season that it cannot end before it begins', async () => {
    const { page } = story;
    await room('Out', 'How we plan');
    const seasons = page.getByRole('region', { name: 'Seasons' });
    await seasons.getByLabel(/^Name/).fill('Winter feast');
    await seasons.getByLabel(/^From/).fill(dayIn(0));
    await seasons.getByLabel(/^To/).fill(dayIn(-3));
    await seasons.getByLabel(/^Times an ordinary day/).fill('3');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText(/A season ends on or after the day it begins/).waitFor();
    await seasons.getByLabel(/^To/).fill(dayIn(30));
  });

  step('works on Saturdays, closes a feast day and plans the counter', async () => {
    const { page } = story;
    const week = page.getByRole('group', { name: 'Days on which we work' });
    await week.getByText('Saturday').click();
    await page.getByLabel(/^Counter sales to plan for/).fill('14');
    await page.getByRole('button', { name: 'Add a day' }).click();
    const special = page.getByRole('region', { name: 'Days unlike the others' });
    await special.getByLabel(/^Day/).fill(dayIn(10));
    expect(await accessibilityFaults(page)).toEqual([]);
    await save();
    await page.reload();
    expect(await week.getByLabel('Saturday').isChecked()).toBe(true);
    expect(await page.getByLabel(/^Times an ordinary day/).inputValue()).toBe('3');
  });

  step('finds the season in the forecast: three times as much', async () => {
    const { expected, ordinary } = await foretell();
    expect(expected).toBeCloseTo(3 * ordinary, 0);
    await story.page.getByText('Winter feast').first().waitFor();
  });

  step('writes down packs and delivery times, and a least order', async () => {
    const { page } = story;
    await page.getByRole('link', { name: /^Goods in/ }).click();
    await room('Goods in', 'Buying');
    await page.getByRole('button', { name: 'Change Cream 35 %' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel(/^From order to delivery/).fill('');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.getByText('Needed').first().waitFor();
    await dialog.getByLabel(/^From order to delivery/).fill('3');
    await dialog.getByLabel(/^One pack holds/).fill('1000');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.waitFor({ state: 'detached' });
    const rows = await rowsOf(register('From whom, in what packs'));
    const cream = rows.find(([name]) => name === 'Cream 35 %');
    expect(cream?.slice(0, 4)).toEqual(['Cream 35 %', 'Hollowbrook Dairy', '3 days', '1 kg']);
    await page.getByRole('button', { name: 'Change Hollowbrook Dairy' }).click();
    await dialog.getByLabel(/^At least/).fill('5000');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.waitFor({ state: 'detached' });
    await register('Least order').getByText('€5,000.00').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('reads the packs and the least order in the next plan’s shopping list', async () => {
    const { page } = story;
    await writeOrder(story, {
      note: 'for the tea room',
      inDays: 20,
      box: 'Box of nine, assorted',
      count: '60',
    });
    await makePlan(story);
    const line = register('Shopping list').getByRole('row').filter({ hasText: 'Cream 35 %' });
    expect(await line.innerText()).toMatch(/\d+ kg \(\d+ packs?\)/);
    await page.getByText(/Hollowbrook Dairy: .*below the minimum order/).waitFor();
    await page.getByRole('button', { name: 'Table', exact: true }).click();
    expect((await rowsOf(register('What to make when'))).length).toBeGreaterThan(3);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
