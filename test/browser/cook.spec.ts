import { BenchHands } from '../support/workshop/bench';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { accessibilityFaults } from './support/accessibility';
import { isPdf, openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let creamLots: string[];
let couvertureLot: string;

const nameOf = async (id: string): Promise<string> => {
  const answer = await story.service.as.maker.get(`/items/${id}`).expect(200);
  return (answer.body as { name: string }).name;
};

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  creamLots = [
    await kitchen.receive(kitchen.cream, '2000', { useBy: '2099-02-01' }),
    await kitchen.receive(kitchen.cream, '2000', { useBy: '2099-01-01' }),
  ];
  couvertureLot = await kitchen.receive(kitchen.couverture, '5000');
  await kitchen.receive(kitchen.tea, '100');
});
afterAll(() => story.end());

describe('a maker in the kitchen', () => {
  step('starts a filling, scaled to the grams that are wanted', async () => {
    const { page } = story;
    await page.goto('/kitchen');
    await page.getByRole('link', { name: 'Start a filling' }).click();
    const ganache = await nameOf(kitchen.ganache);
    await page.getByRole('combobox', { name: /^What is made/ }).click();
    await page.getByRole('option', { name: ganache }).click();
    await page.getByLabel(/^How much/).fill('500');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: ganache }).waitFor();
    const cream = page.getByRole('listitem').filter({ hasText: /^Cream/ });
    await cream.getByText('of 240 g').waitFor();
  });

  step('is handed the lot that runs out first', async () => {
    const { page } = story;
    const cream = await nameOf(kitchen.cream);
    await page.getByRole('button', { name: `Weigh in ${cream}` }).click();
    const dialog = page.getByRole('dialog');
    const lots = dialog.getByRole('radio');
    expect(await lots.count()).toBe(2);
    expect(await lots.first().isChecked()).toBe(true);
    await dialog.getByText(new RegExp(`^${creamLots[1] ?? ''}`)).waitFor();
    expect(await lots.first().inputValue()).toBe(creamLots[1]);
  });

  step('is refused more than the lot holds, in words, and weighs in what is there', async () => {
    const { page } = story;
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel(/^Quantity/).fill('2500');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog
      .getByRole('alert')
      .getByText(new RegExp(creamLots[1] ?? ''))
      .waitFor();
    await dialog.getByLabel(/^Quantity/).fill('240');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByText('enough').first().waitFor();
  });

  step('scans the couverture’s tag instead of looking for its line', async () => {
    const { page } = story;
    await scan(page, couvertureLot);
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel(/^Quantity/).fill('300');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
    const tea = await nameOf(kitchen.tea);
    await page.getByRole('button', { name: `Weigh in ${tea}` }).click();
    await dialog.getByLabel(/^Quantity/).fill('10');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
  });

  step('puts back what was weighed in twice', async () => {
    const { page } = story;
    await scan(page, couvertureLot);
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel(/^Quantity/).fill('25');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
    const row = page.getByRole('row').filter({ has: page.getByRole('cell', { name: /^25\s/ }) });
    await row.getByRole('button', { name: 'Put back' }).click();
    await dialog.getByLabel(/^Reason/).fill('weighed twice');
    await dialog.getByRole('button', { name: 'Put back' }).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByText('put back', { exact: true }).first().waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('writes the temperature of the boil and the losses', async () => {
    const { page } = story;
    const dialog = page.getByRole('dialog');
    await page.getByRole('button', { name: 'Write a reading' }).last().click();
    await dialog.getByText('between 82 and 95').waitFor();
    await dialog.getByLabel(/^temperature/i).fill('84.5');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByRole('row').filter({ hasText: '84.5' }).getByText('within limits').waitFor();
    await page.getByRole('button', { name: 'Write a loss' }).click();
    expect(await dialog.getByRole('radio', { name: 'steam' }).isChecked()).toBe(true);
    await dialog.getByLabel(/^Weight/).fill('15');
    await dialog.getByRole('button', { name: 'Save' }).click();
    await dialog.waitFor({ state: 'detached' });
  });

  step(
    'finishes: the rest is named, and the filling is a lot with its own code and date',
    async () => {
      const { page, device } = story;
      await page.getByRole('button', { name: 'Finish', exact: true }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByLabel(/^What came out/).fill('520');
      await dialog.getByLabel(/^15\sg: The rest is/).selectOption({ label: 'scrapings' });
      await dialog.getByLabel(/^Minutes of work/).fill('35');
      await dialog.getByRole('button', { name: 'Finish' }).click();
      await dialog.waitFor({ state: 'detached' });
      const made = page.getByRole('region', { name: 'Made' });
      await made.getByText('520 g').waitFor();
      await made.getByRole('link').first().click();
      await page.getByText(/^Best before /).waitFor();
      expect(await isPdf(device, page.getByRole('link', { name: 'Lot tag' }))).toBe(true);
      await page.getByText('Why?').first().click();
      await page.getByText('this one rules').waitFor();
    },
  );

  step('cooks a large filling in two pots, and sees what they give together', async () => {
    const { page, service } = story;
    const hands = new BenchHands(service);
    const head = await hands.open(kitchen.ganache, { plannedQuantity: '1000' });
    await page.goto(`/kitchen/batches/${head.id}`);
    await page.getByRole('button', { name: 'Cook another part' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText('The first part has 1 kg planned.').waitFor();
    await dialog.getByLabel(/^How much in this part/).fill('1000');
    await dialog.getByRole('button', { name: 'Start' }).click();
    await dialog
      .getByRole('alert')
      .getByText(/^Of what was planned/)
      .waitFor();
    await dialog.getByLabel(/^How much in this part/).fill('400');
    expect(await accessibilityFaults(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Start' }).click();
    await dialog.waitFor({ state: 'detached' });
    const parts = page.getByRole('region', { name: 'Parts of this making' });
    await parts.getByText('part 2 of 2', { exact: true }).waitFor();
    const cream = page.getByRole('listitem').filter({ hasText: /^Cream/ });
    await cream.getByText('of 192 g').waitFor();
    const id = page.url().split('/').at(-1) ?? '';
    await hands.draw({ id }, { lotCode: couvertureLot, quantity: '240' }).expect(201);
    await hands.finish({ id }, { outputs: [{ quantity: '240' }] }).expect(200);
    await page.reload();
    await parts.getByRole('link', { name: `part 1 of 2 ${head.code}` }).click();
    await cream.getByText('of 288 g').waitFor();
    await parts.getByText('240 g made of 1 kg planned').waitFor();
    await parts.getByText(/160 g of what was planned comes from no part/).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.goto('/kitchen');
    const inHand = page.getByRole('region', { name: 'In hand' }).getByRole('row');
    await inHand.filter({ hasText: `${head.code} part 1 of 2` }).waitFor();
    const finished = page.getByRole('region', { name: 'Finished lately' }).getByRole('row');
    await finished.filter({ hasText: 'part 2 of 2' }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
