import { type RunningService } from '../support/service/test-service';
import { allText, readPdf } from '../support/papers/read-pdf';
import { rowsOf, someLot } from './support/demo-facts';
import { bytesOf, openDemoStory, scan, step, type Story } from './support/story';

jest.setTimeout(300_000);

let story: Story<RunningService>;
let box: string;

beforeAll(async () => {
  story = await openDemoStory('maker');
  box = (
    await someLot(story, 'kind=box&limit=500', ({ itemName }) => itemName.includes('assorted'))
  ).code;
});
afterAll(() => story.end());

const heading = (name: string | RegExp) =>
  story.page.getByRole('heading', { level: 1, name }).waitFor();
const picture = () => story.page.getByRole('figure');
const register = (name: string) => story.page.getByRole('table', { name, exact: true });

/** Long registers show their first rows and give more when they are asked to. */
const allRowsOf = async (name: string): Promise<void> => {
  await register(name).locator('tbody tr').first().waitFor();
  const more = story.page.getByRole('button', { name: 'Show more' });
  while ((await more.count()) > 0) await more.first().click();
};

/** Grams of the flows in the river's twin whose end is named so. */
const gramsTo = async (to: RegExp): Promise<number> => {
  const rows = await rowsOf(picture().getByRole('table'));
  return rows
    .filter(([, end = '']) => to.test(end))
    .reduce((sum, [, , grams = '']) => sum + Number(grams.replaceAll(',', '')), 0);
};

describe('a maker with a box in hand', () => {
  step('scans it and opens what is behind it', async () => {
    const { page } = story;
    await scan(page, box);
    await heading(/^Box of/);
    await page.getByRole('link', { name: 'Trace it' }).click();
    await heading(`Trace of ${box}`);
    await picture().getByText(box).first().waitFor();
    await page.getByText(/tell your food authority at once/).waitFor();
  });

  step('reads the same grams in the twin of the river, down to the box', async () => {
    await picture().getByRole('button', { name: 'Table' }).click();
    await picture().getByRole('table').waitFor();
    const [[, , whole = ''] = []] = await rowsOf(register('Mass balance'));
    const made = Number.parseFloat(whole.replaceAll(',', '')) * (whole.endsWith('kg') ? 1000 : 1);
    expect(made).toBeGreaterThan(0);
    // From a kilogram on, weights are written to the gram.
    expect(Math.abs((await gramsTo(new RegExp(`${box}$`))) - made)).toBeLessThan(0.6);
  });

  step('sees that the balance sums to the gram', async () => {
    const { page } = story;
    await page.getByText('Balances to the gram').waitFor();
    const lines = (await rowsOf(register('Mass balance'))).map(([side, , , percent = '']) => ({
      side,
      percent: Number.parseFloat(percent),
    }));
    const sum = (side: string) =>
      lines.filter((line) => line.side === side).reduce((total, { percent }) => total + percent, 0);
    expect(sum('In')).toBeCloseTo(100, 1);
    expect(sum('Out')).toBeCloseTo(100, 1);
  });

  step('prints the report, which names the supplier’s lots', async () => {
    const { page, device } = story;
    const report = page.getByRole('link', { name: /Trace report/ });
    const text = allText(readPdf(await bytesOf(device, report), 'trace'));
    expect(text).toContain(box);
    expect(text).toContain('Quenmark Cocoa Traders');
  });

  step('opens a supplier’s lot from there and sees forward who got it', async () => {
    const { page } = story;
    const row = register('What is behind it').getByRole('row').filter({ hasText: 'COC-' });
    const code = (await row.first().getByRole('link').innerText()).trim();
    await row.first().getByRole('link').click();
    await page.getByRole('link', { name: 'Trace it' }).click();
    await heading(`Trace of ${code}`);
    await page.getByText('Ahead', { exact: true }).click();
    await allRowsOf('Where it went');
    await register('Where it went').getByRole('link', { name: box }).waitFor();
    await register('Sent out').getByText('Hotel Tidewater').first().waitFor();
    expect(await register('What is behind it').count()).toBe(0);
  });
});

describe('a maker who finds fault with a tool', () => {
  step('traces a chipped tray to the boxes that its pieces went into', async () => {
    const { page } = story;
    await page.getByRole('link', { name: /^Moulding/ }).click();
    await page.getByRole('link', { name: 'Moulds' }).click();
    const chipped = page.getByRole('row').filter({ hasText: 'chipped' });
    const tag = (await chipped.getByRole('cell').first().innerText()).trim();
    await chipped.getByRole('link').click();
    await heading(`Trace of ${tag}`);
    await allRowsOf('Where it went');
    await register('Where it went').getByText('Box of sixteen, assorted').first().waitFor();
    await register('Sent out').getByText('Restaurant The Heron Ladder').first().waitFor();
  });

  step('traces a tank between two days', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Trace', exact: true }).click();
    await page.getByText('a tank and time', { exact: true }).click();
    await page.getByLabel(/^Tank/).selectOption({ label: 'Dark tank' });
    expect(await page.getByRole('button', { name: 'Trace', exact: true }).isDisabled()).toBe(true);
    const today = new Date();
    const ago = (days: number) =>
      new Date(today.getTime() - days * 86_400_000).toISOString().slice(0, 10);
    await page.getByLabel(/^From/).fill(ago(13));
    await page.getByLabel(/^Until/).fill(ago(0));
    await page.getByRole('button', { name: 'Trace', exact: true }).click();
    await allRowsOf('Where it went');
    await register('Where it went').getByText('Dark dome').first().waitFor();
    await page.getByText(/Tank lots are linked until the tank was recorded empty/).waitFor();
  });
});
