import { BenchHands } from '../support/workshop/bench';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { accessibilityFaults } from './support/accessibility';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let batchId: string;
let boxLot: string;

const dialog = () => story.page.getByRole('dialog');

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  const bench = new BenchHands(story.service);
  const cream = await kitchen.receive(kitchen.cream, '2000');
  const tea = await kitchen.receive(kitchen.tea, '100');
  const couverture = await kitchen.receive(kitchen.couverture, '5000');
  const carton = await kitchen.receive(kitchen.carton, '20');
  const filling = await bench.make(
    kitchen.ganache,
    [
      { lotCode: cream, quantity: '480' },
      { lotCode: couverture, quantity: '600' },
    ],
    { outputs: [{ quantity: '1080' }] },
  );
  const pieces = await bench.make(
    kitchen.piece,
    [
      { lotCode: couverture, quantity: '144' },
      { lotCode: filling.outputs[0]?.lotCode, quantity: '120' },
    ],
    { outputs: [{ quantity: '24' }] },
  );
  const boxes = await bench.make(
    kitchen.box,
    [
      { lotCode: pieces.outputs[0]?.lotCode, quantity: '24' },
      { lotCode: carton, quantity: '6' },
    ],
    { outputs: [{ quantity: '6' }] },
  );
  boxLot = boxes.outputs[0]?.lotCode ?? '';
  const open = await bench.open(kitchen.ganache, { plannedQuantity: '1000' });
  batchId = open.id;
  await bench.draw(open, { lotCode: cream, quantity: '480' }).expect(201);
  await bench.draw(open, { lotCode: tea, quantity: '20' }).expect(201);
});
afterAll(() => story.end());

describe('a maker with a scale and a thermometer', () => {
  step('weighs an infusion back and is told the steam, the hold-back and the top-up', async () => {
    const { page } = story;
    await page.goto(`/kitchen/batches/${batchId}`);
    await page.getByRole('button', { name: 'Weigh an infusion back' }).click();
    await dialog()
      .getByLabel(/^Liquid before/)
      .fill('480');
    await dialog()
      .getByLabel(/^After the boil/)
      .fill('465');
    await dialog()
      .getByLabel(/^After straining/)
      .fill('425');
    const told = dialog().getByRole('status');
    await told.getByText(/^15\sg$/).waitFor();
    await told.getByText(/^40\sg$/).waitFor();
    await told.getByText(/^55\sg$/).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await dialog().getByRole('button', { name: 'Book these losses' }).click();
    await dialog().waitFor({ state: 'detached' });
    const balance = page.getByRole('region', { name: 'Balance' });
    expect(await balance.getByRole('listitem').count()).toBe(3);
    await balance.getByText(/^75\sg$/).waitFor();
  });

  step('sets which chocolate it is and asks what a reading means', async () => {
    const { page } = story;
    await page.goto(`/goods-in/items/${kitchen.couverture}`);
    await page.getByRole('button', { name: 'Set the curve' }).click();
    await dialog().getByRole('radio', { name: 'dark chocolate' }).check();
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    const tempering = page.getByRole('region', { name: 'Tempering' });
    await tempering.getByText('From the table of common practice').waitFor();
    await tempering.getByRole('radio', { name: 'work' }).check();
    await tempering.getByLabel(/^Temperature/).fill('36');
    await tempering.getByText('too warm').waitFor();
    await tempering.getByLabel(/^Temperature/).fill('31.5');
    await tempering.getByText('within its window').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('plans the infusion before anything is weighed', async () => {
    const { page } = story;
    await page.goto(`/kitchen/batches/${batchId}`);
    const plan = page.getByRole('region', { name: 'Plan the infusion' });
    await plan.getByLabel(/^In which liquid/).selectOption({ index: 1 });
    await plan.getByLabel(/^Liquid \(/).fill('480');
    await plan.getByLabel(/^Dry solids/).fill('20');
    await plan.getByLabel(/^Steam/).fill('15');
    await plan.getByLabel(/^Liquid kept/).fill('2');
    const told = plan.getByRole('status');
    await told
      .getByText(/^40\sg$/)
      .first()
      .waitFor();
    await told.getByText(/^55\sg$/).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('is told at the reading what a temperature means and what to do next', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Write a reading' }).first().click();
    await dialog()
      .getByRole('radio', { name: /^work: / })
      .check();
    await dialog()
      .getByLabel(/^temperature/)
      .fill('36');
    await dialog().getByText('too warm').waitFor();
    await dialog()
      .getByText(/the temper may be lost/)
      .waitFor();
    await dialog()
      .getByLabel(/^temperature/)
      .fill('31.5');
    await dialog().getByText('within its window').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page
      .getByRole('region', { name: 'Readings' })
      .getByText(/^work: /)
      .waitFor();
  });

  step('asks whether chocolate may come out of the cold into this room', async () => {
    const { page } = story;
    await page.goto('/diary');
    await page.getByRole('button', { name: 'Out of the cold?' }).click();
    const fill = (label: RegExp, value: string) =>
      dialog().getByRole('textbox', { name: label }).fill(value);
    await fill(/^The product/, '4');
    await fill(/^The room’s temperature/, '22');
    await fill(/^The room’s humidity/, '60');
    await dialog().getByText('water settles on it').waitFor();
    await dialog()
      .getByText(/until it is warmer than 13\.9 °C/)
      .waitFor();
    await fill(/^The product/, '18');
    await dialog().getByText('stays dry').waitFor();
    await fill(/^The room’s humidity/, '160');
    await dialog().getByText('Humidity is between 1 and 100 per cent.').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  step('weighs packs; the verdict says whether the e-mark may be printed', async () => {
    const { page } = story;
    await page.goto(`/packing/labels/${boxLot}`);
    const packs = page.getByRole('region', { name: 'Weighed packs' });
    await packs.getByText('The e-mark may not be printed').waitFor();
    await packs.getByRole('button', { name: 'Weigh packs' }).click();
    await dialog()
      .getByLabel(/^Net weight on/)
      .fill('40');
    await dialog()
      .getByLabel(/^Packs in/)
      .fill('120');
    await dialog()
      .getByLabel(/^Net weights/)
      .fill('44 about');
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().getByText('Not a weight: about').waitFor();
    await dialog()
      .getByLabel(/^Net weights/)
      .fill(Array.from({ length: 30 }, (_none, at) => `4${String(at % 3)}.5`).join('\n'));
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    await packs.getByRole('row').nth(1).waitFor();
    await packs.getByText('The e-mark may be printed').waitFor();
  });
});
