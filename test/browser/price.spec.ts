import type { RunningService } from '../support/service/test-service';
import { rowsOf } from './support/demo-facts';
import { isPdf, openDemoStory, step, type Story } from './support/story';

jest.setTimeout(300_000);

const BOX = 'Box of nine, assorted';

let story: Story<RunningService>;

beforeAll(async () => {
  story = await openDemoStory('owner');
}, 600_000);
afterAll(() => story.end());

const register = (name: string) => story.page.getByRole('table', { name, exact: true });
const euros = (text: string): number => Number(text.replaceAll(/[^\d.-]/g, ''));
const holds = () => story.page.locator('.sheet').filter({ hasText: 'Holds now' });

const setPrice = async (amount: string, label: RegExp): Promise<void> => {
  const { page } = story;
  await page.getByRole('button', { name: 'Set a price' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText(/Ask your tax adviser/).waitFor();
  await dialog.getByLabel(label).fill(amount);
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.waitFor({ state: 'detached' });
};

describe('an owner who prices a box', () => {
  step('sees what it costs, and how the cost builds up', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Prices', exact: true }).click();
    await page.getByRole('link', { name: BOX }).click();
    await page.getByRole('heading', { level: 1, name: BOX }).waitFor();
    const cost = page.locator('.sheet').filter({ hasText: 'each' }).first();
    const each = euros(await cost.locator('.figure-large').innerText());
    expect(each).toBeGreaterThan(1);
    const figure = page.getByRole('figure');
    await figure.getByText('material', { exact: false }).first().waitFor();
    await figure.getByRole('button', { name: 'Table' }).click();
    const steps = await rowsOf(figure.getByRole('table'));
    const built = steps.slice(0, -1).reduce((sum, [, amount = '']) => sum + euros(amount), 0);
    expect(built).toBeCloseTo(each, 2);
    for (const part of ['material', 'packaging', 'labour', 'overhead'])
      expect(steps.some(([name = '']) => name.startsWith(part))).toBe(true);
  });

  step('opens the cost into its reasons', async () => {
    const { page } = story;
    await page.getByText('Where the money goes').first().click();
    const sources = await rowsOf(register('Where the money goes'));
    const couverture = sources.find(([, , source = '']) => source.includes('Dark couverture'));
    expect(euros(couverture?.[3] ?? '')).toBeGreaterThan(0);
  });

  step('sets a price for the counter, VAT inside', async () => {
    const { page } = story;
    await setPrice('14.50', /^Price with VAT/);
    await holds().getByText('€14.50').waitFor();
    await page.getByText('Counter', { exact: true }).waitFor();
  });

  step('sets a price for the trade, without VAT', async () => {
    const { page } = story;
    await page.getByText('Trade', { exact: true }).click();
    await holds().getByText('€9.20').waitFor();
    await setPrice('9.60', /^Price without VAT/);
    await holds().getByText('€9.60').waitFor();
  });

  step('asks what happens when couverture goes up by a third', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Prices', exact: true }).click();
    await register('Price list').getByText('€14.50').waitFor();
    await page.getByLabel(/^Name contains/).fill('couverture');
    await page.getByLabel(/^Dearer by/).fill('33');
    await page.getByRole('button', { name: 'Reckon' }).click();
    await register('What if').waitFor();
    const rows = await rowsOf(register('What if'));
    const [, cost = '', change = '', margin = '', keep = ''] =
      rows.find(([name]) => name === BOX) ?? [];
    const [before = 0, after = 0] = cost.split('→').map(euros);
    expect(after).toBeGreaterThan(before);
    expect(euros(change)).toBeCloseTo(after - before, 1);
    const [wide = 0, narrow = 0] = margin.split('→').map((text) => Number.parseFloat(text));
    expect(narrow).toBeLessThan(wide);
    expect(euros(keep)).toBeGreaterThan(0);
  });

  step('prints the price list', async () => {
    const { page, device } = story;
    expect(await isPdf(device, page.getByRole('link', { name: /Price list/ }))).toBe(true);
  });
});
