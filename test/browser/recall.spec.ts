import { allText, readPdf } from '../support/papers/read-pdf';
import type { RunningService } from '../support/service/test-service';
import { rowsOf, someLot } from './support/demo-facts';
import { bytesOf, openDemoStory, scan, step, type Story } from './support/story';

jest.setTimeout(300_000);

let story: Story<RunningService>;

beforeAll(async () => {
  story = await openDemoStory('owner');
}, 600_000);
afterAll(() => story.end());

const dialog = () => story.page.getByRole('dialog');
const register = (name: string) => story.page.getByRole('table', { name, exact: true });
const press = (name: string) => story.page.getByRole('button', { name, exact: true }).click();

const paper = async (name: RegExp): Promise<string> => {
  const link = story.page.getByRole('link', { name });
  return allText(readPdf(await bytesOf(story.device, link), 'recall'));
};

const close = async (conclusion: string): Promise<void> => {
  await press('Close the case');
  await dialog()
    .getByLabel(/^What was found/)
    .fill(conclusion);
  await dialog().getByRole('button', { name: 'Close the case' }).click();
  await story.page.getByText(/^\W*Closed$/).waitFor();
};

describe('an owner who is warned of a supplier’s lot', () => {
  step('finds it on hold under Today and opens a recall from its trace', async () => {
    const { page } = story;
    const held = page.getByRole('region', { name: 'On hold, and why' });
    await held.getByRole('link', { name: /^Hazelnuts, roasted/ }).click();
    await page.getByRole('link', { name: 'Trace it' }).click();
    await page.getByRole('link', { name: 'Open a recall from this' }).click();
    await page.getByText('Real', { exact: true }).click();
    await page.getByText(/tell your food authority now/).waitFor();
    await page.getByLabel(/^What is wrong/).fill('Pieces of shell possible in the hazelnuts');
    await press('Find everything');
    await page.getByRole('heading', { level: 1, name: /^Case / }).waitFor();
    await register('Lots in scope').getByText('Hazelnut praline').first().waitFor();
  });

  step('freezes the scope and holds all that is still here', async () => {
    const { page } = story;
    await press('Freeze the scope');
    await page.getByText(/lots? in scope (is|are) here and not on hold/).waitFor();
    await press('Hold all of it');
    await page.getByText('Everything here is on hold.').waitFor();
    const here = await rowsOf(register('Still here, as it is now'));
    expect(here.length).toBeGreaterThan(1);
    expect(here.filter(([, , , , state = '']) => !/^\S* ?On hold$/.test(state))).toEqual([]);
  });

  step('prints the list: every customer, how to reach them, and the lots they got', async () => {
    const text = await paper(/^Recall list \(PDF\)/);
    for (const [name = ''] of await rowsOf(register('Customers'))) expect(text).toContain(name);
    expect(text).toContain('+00 000 000 011');
    for (const [, , , lot = ''] of await rowsOf(register('Where it went')))
      expect(text).toContain(lot);
  });

  step('prints letters to the customers and a notice for the public', async () => {
    expect(await paper(/^Letters to customers/)).toContain('Hotel Tidewater');
    expect(await paper(/^Notice for the public/)).toContain('Box of nine hazelnut hearts');
  });

  step('tells the hotel and takes a box back', async () => {
    const { page } = story;
    const hotel = register('Customers').getByRole('row').filter({ hasText: 'Hotel Tidewater' });
    await hotel.getByRole('button', { name: 'Hotel Tidewater was told' }).click();
    await hotel.getByText(/^\W*told$/).waitFor();
    const record = page.getByRole('region', { name: 'On record' });
    await record
      .getByRole('listitem')
      .filter({ hasText: 'customer told' })
      .getByText('Hotel Tidewater')
      .waitFor();
    await press('Goods came back');
    await dialog()
      .getByLabel(/^From whom/)
      .selectOption({ label: 'Hotel Tidewater' });
    await dialog()
      .getByLabel(/^How many/)
      .fill('1');
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByText('goods came back', { exact: true }).waitFor();
    const back = await hotel.getByRole('cell').nth(5).innerText();
    expect(Number.parseFloat(back)).toBeGreaterThan(0);
    await page.getByText('Everything here is on hold.').waitFor();
  });

  step('closes with a report that tells the whole case', async () => {
    await close('Shell found in one bag; the mill sieves twice from now on');
    const text = await paper(/^Report \(PDF\)/);
    expect(text).toContain('the mill sieves twice');
    expect(text).toContain('Hotel Tidewater');
    expect(await story.page.getByRole('button', { name: 'Goods came back' }).count()).toBe(0);
  });

  step('can’t send a box out that the recall holds', async () => {
    const { page } = story;
    const box = await someLot(story, 'kind=box&state=on_hold&limit=100', () => true);
    await scan(page, box.code);
    await page.getByRole('heading', { level: 1, name: box.itemName }).waitFor();
    await page
      .getByText(/Pieces of shell possible/)
      .first()
      .waitFor();
    expect(await page.getByRole('link', { name: 'Send out' }).count()).toBe(0);
  });
});

describe('an owner who rehearses', () => {
  step('goes from a box’s code to the closed case, timed, and nothing is held for it', async () => {
    const { page } = story;
    const held = await someLot(story, 'kind=box&limit=500', ({ itemName }) =>
      itemName.includes('sixteen'),
    );
    await page.getByRole('link', { name: 'Trace', exact: true }).click();
    await page.getByRole('link', { name: 'Recalls' }).click();
    await page.getByRole('link', { name: 'Open a recall' }).click();
    await scan(page, held.code);
    await page.getByLabel(/^What is wrong/).fill('Yearly rehearsal');
    await press('Find everything');
    await page.getByText('A rehearsal holds nothing.').waitFor();
    await press('Freeze the scope');
    expect(await paper(/^Recall list \(PDF\)/)).toMatch(/rehearsal/i);
    await close('List in hand within minutes');
    await page
      .getByText(/after 0(\.\d)? min/)
      .first()
      .waitFor();
  });

  step('finds both cases on record', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Trace', exact: true }).click();
    await page.getByRole('link', { name: 'Recalls' }).click();
    await register('Recalls').waitFor();
    await register('Recalls').locator('tbody tr').nth(1).waitFor();
    const cases = await rowsOf(register('Recalls'));
    expect(cases.map(([, mode = '', , state]) => [mode.replace(/^\W+/, ''), state])).toEqual([
      ['rehearsal', 'closed'],
      ['real', 'closed'],
    ]);
  });
});
