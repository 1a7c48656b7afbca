import { addItem, addSpecification, addSupplier } from '../support/workshop/fixtures';
import { isPdf, openStory, pick, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

/** The example company prefix that GS1 keeps for documentation. */
const GTIN = '09506000134352';
let story: Story;

beforeAll(async () => {
  story = await openStory('maker');
  const { service } = story;
  const { id: dairy } = await addSupplier(service, 'Dairy of the example');
  const cream = await addItem(service, {
    ...{ name: 'Cream 35 %', kind: 'ingredient', perishable: true, warmestTempC: '6' },
    gtin: GTIN,
  });
  await addSpecification(service, cream.id, dairy);
  await addItem(service, { name: 'Sugar', kind: 'ingredient' });
});
afterAll(() => story.end());

describe('a maker at the door', () => {
  step('scans a carton from anywhere and finds the line filled in', async () => {
    const { page } = story;
    await page.goto('/');
    await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
    await scan(page, `]C101${GTIN}1730013110CR-88`);
    await page.getByRole('link', { name: 'Take it in' }).click();
    await page.getByText(/^Taken from the code: Cream 35 %, CR-88/).waitFor();
    expect(await page.getByLabel(/^Supplier’s lot/).inputValue()).toBe('CR-88');
    expect(await page.getByLabel(/^Date\b/).inputValue()).toBe('2030-01-31');
    expect(await page.getByRole('radio', { name: 'use by' }).isChecked()).toBe(true);
  });

  step('is told at the field what is still needed, and keeps the draft over a reload', async () => {
    const { page } = story;
    await page.getByLabel('Supplier *').selectOption({ label: 'Dairy of the example' });
    await page.getByRole('button', { name: 'Add this line' }).click();
    expect(await page.getByText('Needed', { exact: true }).count()).toBe(2);
    await page.getByLabel(/^Price of the whole line/).fill('24.50');
    await page.getByText('Must not arrive warmer than 6 °C.').waitFor();
    await page.getByLabel(/^Temperature on arrival/).fill('4.5');
    await page.reload();
    expect(await page.getByLabel(/^Supplier’s lot/).inputValue()).toBe('CR-88');
    expect(await page.getByLabel(/^Temperature on arrival/).inputValue()).toBe('4.5');
  });

  step('weighs on the large keypad: two weighings less the tare', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Open the keypad for Quantity' }).click();
    const keypad = page.getByRole('dialog', { name: 'Quantity' });
    for (const key of ['2', '0', '0']) await keypad.getByRole('button', { name: key }).click();
    await keypad.getByRole('button', { name: 'Tare' }).click();
    for (const key of ['2', '7', '0', '0']) {
      await keypad.getByRole('button', { name: key, exact: true }).click();
    }
    await keypad.getByRole('button', { name: 'Add this weighing' }).click();
    for (const key of ['2', '7', '0', '0']) {
      await keypad.getByRole('button', { name: key, exact: true }).click();
    }
    await keypad.getByRole('button', { name: 'Done' }).click();
    expect(await page.getByLabel(/^Quantity/).inputValue()).toBe('5000');
    await page.getByRole('button', { name: 'Add this line' }).click();
    await page.getByRole('heading', { name: 'On this delivery so far' }).waitFor();
  });

  step('books a second line without a specification and a third that is refused', async () => {
    const { page } = story;
    await pick(page, /^Item/, 'Sugar');
    await page.getByLabel(/^Supplier’s lot/).fill('SU-1');
    await page.getByText('none', { exact: true }).click();
    await page.getByLabel(/^Quantity/).fill('25000');
    await page.getByLabel(/^Price of the whole line/).fill('31.25');
    await page.getByRole('button', { name: 'Add this line' }).click();

    await pick(page, /^Item/, 'Cream 35 %');
    await page.getByLabel(/^Supplier’s lot/).fill('CR-89');
    await page.getByText('use by', { exact: true }).click();
    await page.getByLabel(/^Date\b/).fill('2030-02-28');
    await page.getByLabel(/^Quantity/).fill('5000');
    await page.getByLabel(/^Price of the whole line/).fill('24.50');
    await page.getByLabel(/^Temperature on arrival/).fill('11');
    await page.getByLabel('Refuse this line').check();
    await page.getByLabel(/^Why it is refused/).fill('Came warm');
    await page.getByRole('button', { name: 'Add this line' }).click();
    await page.getByRole('button', { name: 'Book the delivery' }).click();

    await page.getByRole('heading', { level: 1, name: /^Delivery of/ }).waitFor();
    const rows = page.getByRole('table').getByRole('row');
    await rows.filter({ hasText: 'CR-88' }).getByText('ready to use').waitFor();
    await rows
      .filter({ hasText: 'SU-1' })
      .getByText(/on hold: .*specification/)
      .waitFor();
    await rows.filter({ hasText: 'CR-89' }).getByText('refused: Came warm').waitFor();
  });

  step('prints a tag with a code for each lot', async () => {
    const { page, device } = story;
    const link = page.getByRole('link', { name: /Print the lot tags/ });
    expect(await isPdf(device, link)).toBe(true);
  });

  step('opens the lot by scanning its own tag', async () => {
    const { page } = story;
    const code = await page.getByRole('table').getByRole('link').first().textContent();
    await page.goto('/');
    await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
    await scan(page, code ?? '');
    await page.getByRole('heading', { level: 1, name: 'Cream 35 %' }).waitFor();
    await page.getByText('Use by 31 Jan 2030').waitFor();
  });
});
