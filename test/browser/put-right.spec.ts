import { BenchHands } from '../support/workshop/bench';
import { addItem, addSpecification, addSupplier, receive } from '../support/workshop/fixtures';
import { addRecipe, type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { accessibilityFaults } from './support/accessibility';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let creamLots: string[];
let batchId: string;
let made: string;
let couverture: string;
let milkLot: string;

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  await addRecipe(story.service.databaseUrl, {
    itemId: kitchen.ganache,
    yieldMassG: '1000',
    lifeAfterThawDays: 5,
    lines: [
      [kitchen.cream, '400', 'base'],
      [kitchen.couverture, '600', 'base'],
    ],
  });
  creamLots = [await kitchen.receive(kitchen.cream, '2000')];
  creamLots.push(await kitchen.receive(kitchen.cream, '2000'));
  couverture = await kitchen.receive(kitchen.couverture, '5000');
  const supplier = await addSupplier(story.service, 'Invented Milk Chocolate Supplier');
  const milk = await addItem(story.service, { name: 'Milk couverture', kind: 'ingredient' });
  await addSpecification(story.service, milk.id, supplier.id, { milk: 'contains' });
  milkLot = (await receive(story.service, supplier.id, { itemId: milk.id, quantity: '900' }))
    .lotCode;
  const batch = await new BenchHands(story.service).make(
    kitchen.ganache,
    [
      { lotCode: creamLots[0], quantity: '400' },
      { lotCode: couverture, quantity: '600' },
    ],
    { outputs: [{ quantity: '1000' }] },
  );
  batchId = batch.id;
  made = batch.outputs[0]?.lotCode ?? '';
});
afterAll(() => story.end());

describe('a maker who finds afterwards that another carton was open', () => {
  const dialog = () => story.page.getByRole('dialog');

  step('is refused a correction after which the batch does not balance', async () => {
    const { page } = story;
    await page.goto(`/kitchen/batches/${batchId}`);
    await page.getByRole('button', { name: 'Put right' }).click();
    await dialog()
      .getByLabel(new RegExp(creamLots[0] ?? ''))
      .check();
    await dialog().getByRole('button', { name: 'Add a weighing' }).click();
    await dialog()
      .getByLabel(/^Lot/)
      .fill(creamLots[1] ?? '');
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('410');
    await dialog()
      .getByLabel(/^Reason/)
      .fill('the other carton was open');
    expect(await accessibilityFaults(page)).toEqual([]);
    await dialog().getByRole('button', { name: 'Put right' }).click();
    await dialog().getByRole('alert').getByText(/10 g/).waitFor();
  });

  step('books the opposite entry and the right one, with the reason', async () => {
    const { page } = story;
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('400');
    await dialog().getByRole('button', { name: 'Put right' }).click();
    await dialog().waitFor({ state: 'detached' });
    const rows = page.getByRole('row').filter({ hasText: 'the other carton was open' });
    await rows
      .filter({ hasText: creamLots[1] ?? '' })
      .first()
      .waitFor();
    const first = await story.service.as.maker.get(`/lots/${creamLots[0] ?? ''}`).expect(200);
    expect((first.body as { onHandQuantity: string }).onHandQuantity).toBe('2000.000');
  });

  step(
    'is shown what another item changes before it is booked as what really went in',
    async () => {
      const { page } = story;
      await page.getByRole('button', { name: 'Put right' }).click();
      await dialog().getByLabel(new RegExp(couverture)).check();
      await dialog().getByRole('button', { name: 'Add a weighing' }).click();
      await dialog().getByLabel(/^Lot/).fill(milkLot);
      await dialog()
        .getByLabel(/^Quantity/)
        .fill('600');
      await dialog().getByLabel(/^As/).selectOption('base');
      await dialog()
        .getByLabel(/^Reason/)
        .fill('milk couverture by mistake');
      await dialog().getByRole('button', { name: 'Put right' }).click();
      await dialog().getByText('not known → contains').waitFor();
      await dialog()
        .getByRole('alert')
        .getByText(/accept what changes/)
        .waitFor();
      expect(await accessibilityFaults(page)).toEqual([]);
      await dialog()
        .getByLabel(/^I have read what changes/)
        .check();
      await dialog().getByRole('button', { name: 'Put right' }).click();
      await dialog().waitFor({ state: 'detached' });
      await page
        .getByRole('row')
        .filter({ hasText: 'milk couverture by mistake' })
        .filter({ hasText: milkLot })
        .first()
        .waitFor();
    },
  );

  step('marks a reading as wrong, which stays to be seen with why', async () => {
    const { page, service } = story;
    const body = { measure: 'temp_c', value: '60' };
    await service.as.maker.post(`/batches/${batchId}/readings`, body).expect(201);
    await page.reload();
    await page.getByRole('button', { name: /^Mark as wrong: .*60/ }).click();
    await dialog().getByRole('button', { name: 'Mark as wrong' }).click();
    await dialog()
      .getByLabel(/^Reason/)
      .fill('the probe hung in the steam');
    expect(await accessibilityFaults(page)).toEqual([]);
    await dialog().getByRole('button', { name: 'Mark as wrong' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByText('marked as wrong: the probe hung in the steam').waitFor();
    expect(await page.getByRole('button', { name: /^Mark as wrong: .*60/ }).count()).toBe(0);
  });

  step(
    'takes a lot back that was weighed wrongly, and gives what came out a new code',
    async () => {
      const { page, service } = story;
      const batch = await new BenchHands(service).make(
        kitchen.ganache,
        [
          { lotCode: creamLots[1], quantity: '400' },
          { lotCode: couverture, quantity: '600' },
        ],
        { outputs: [{ quantity: '1000' }] },
      );
      const wrong = batch.outputs[0]?.lotCode ?? '';
      await page.goto(`/kitchen/batches/${batch.id}`);
      await page.getByRole('button', { name: 'Put right' }).click();
      await dialog().getByLabel(new RegExp(wrong)).check();
      await dialog()
        .getByText(/Destroy every label/)
        .waitFor();
      await dialog()
        .getByLabel(/^What came out/)
        .fill('960');
      await dialog()
        .getByLabel(/^Reason/)
        .fill('the bowl was weighed with it');
      await dialog().getByRole('button', { name: 'Put right' }).click();
      await dialog().getByRole('alert').getByText(/40 g/).waitFor();
      await dialog().getByRole('button', { name: 'Add a loss' }).click();
      await dialog()
        .getByLabel(/^Weight/)
        .fill('40');
      expect(await accessibilityFaults(page)).toEqual([]);
      await dialog().getByRole('button', { name: 'Put right' }).click();
      await dialog().waitFor({ state: 'detached' });
      const lots = page.getByRole('region', { name: 'Made' }).getByRole('listitem');
      await lots
        .filter({ hasText: wrong })
        .getByText(/taken back: the bowl/)
        .waitFor();
      const right = lots.filter({ hasText: '960 g' });
      expect(await right.count()).toBe(1);
      expect(await right.getByText(wrong).count()).toBe(0);
      const lot = await service.as.maker.get(`/lots/${wrong}`).expect(200);
      expect((lot.body as { onHandQuantity: string }).onHandQuantity).toBe('0.000');
    },
  );

  step('marks a tray as wrong that was never filled, which frees it', async () => {
    const { page, service } = story;
    const added = await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 1 });
    const tag = (added.body as { items: { tag: string }[] }).items[0]?.tag ?? '';
    const cast = await new BenchHands(service).open(kitchen.piece, { plannedTrays: 1 });
    const use = { mouldTag: tag, cavitiesFilled: 24 };
    await service.as.maker.post(`/batches/${cast.id}/mould-uses`, use).expect(201);
    await page.goto(`/kitchen/batches/${cast.id}`);
    await page.getByRole('button', { name: `Mark as wrong: ${tag}` }).click();
    await dialog()
      .getByText(/The tray is free again/)
      .waitFor();
    await dialog().getByRole('button', { name: 'Mark as wrong' }).click();
    await dialog().getByText('Say why').waitFor();
    await dialog()
      .getByLabel(/^Reason/)
      .fill('the tray beside it was filled');
    expect(await accessibilityFaults(page)).toEqual([]);
    await dialog().getByRole('button', { name: 'Mark as wrong' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByText('taken back: the tray beside it was filled').waitFor();
    expect(await page.getByRole('button', { name: `Mark as wrong: ${tag}` }).count()).toBe(0);
    const mould = await service.as.maker.get(`/moulds/${tag}`).expect(200);
    expect((mould.body as { inBatchCode: string | null }).inBatchCode).toBeNull();
  });

  step('puts the filling into the freezer and takes it out again', async () => {
    const { page } = story;
    await page.goto(`/store/lots/${made}`);
    await page.getByRole('button', { name: 'Into the freezer' }).click();
    await dialog().getByRole('button', { name: 'Into the freezer' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByText('in the freezer since').waitFor();
    await page.getByRole('button', { name: 'Out of the freezer' }).click();
    await dialog().getByRole('button', { name: 'Out of the freezer' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByText(/^thawed /).waitFor();
    expect(await page.getByRole('button', { name: 'Into the freezer' }).count()).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
