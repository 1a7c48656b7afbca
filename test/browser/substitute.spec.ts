import { addItem, addSpecification, addSupplier, receive } from '../support/workshop/fixtures';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { accessibilityFaults } from './support/accessibility';
import { openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let couverture: string;
let otherLot: string;

beforeAll(async () => {
  story = await openStory('maker');
  const { service } = story;
  kitchen = await openKitchen(service);
  await kitchen.receive(kitchen.couverture, '5000');
  const supplier = await addSupplier(service, 'Invented Milk Chocolate Supplier');
  const milk = await addItem(service, { name: 'Milk couverture', kind: 'ingredient' });
  await addSpecification(service, milk.id, supplier.id, { milk: 'contains' });
  otherLot = (await receive(service, supplier.id, { itemId: milk.id, quantity: '900' })).lotCode;
  const item = await service.as.maker.get(`/items/${kitchen.couverture}`).expect(200);
  couverture = (item.body as { name: string }).name;
  const batch = await service.as.maker
    .post('/batches', { itemId: kitchen.ganache, plannedQuantity: '500' })
    .expect(201);
  await story.page.goto(`/kitchen/batches/${(batch.body as { id: string }).id}`);
});
afterAll(() => story.end());

describe('a maker who has run out of what the recipe names', () => {
  const dialog = () => story.page.getByRole('dialog');

  step('is shown what changes before another item goes in, its allergens first', async () => {
    await story.page.getByRole('button', { name: `Weigh in ${couverture}` }).click();
    await dialog()
      .getByLabel(/^Another lot/)
      .fill(otherLot);
    const changes = dialog().getByRole('region', { name: 'What changes with this lot' });
    await changes.getByText(`Milk couverture in place of ${couverture}`).waitFor();
    const milk = changes.getByRole('listitem').filter({ hasText: 'milk' });
    await milk.getByText('not known → contains').waitFor();
    await milk.getByText('The label must change.').waitFor();
    expect(await accessibilityFaults(story.page)).toEqual([]);
  });

  step('books nothing before that is accepted, and why is said', async () => {
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('120');
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog().getByText('Read what changes, then tick here.').waitFor();
    await dialog().getByText('Say why in a few words.').waitFor();
    expect(await story.page.getByRole('row').filter({ hasText: otherLot }).count()).toBe(0);
  });

  step('accepts knowingly; the draw keeps the line’s role and the reason', async () => {
    await dialog()
      .getByLabel(/^I have read what changes/)
      .check();
    await dialog()
      .getByLabel(/^Why this lot/)
      .fill('no dark couverture left');
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog().waitFor({ state: 'detached' });
    const row = story.page.getByRole('row').filter({ hasText: otherLot });
    await row.getByText('no dark couverture left').waitFor();
    await row.getByText('base', { exact: true }).waitFor();
  });

  step('is asked what a scanned lot stands in for, and as what it goes in', async () => {
    await scan(story.page, otherLot);
    await dialog().getByText('which this recipe does not name').waitFor();
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('5');
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog().getByText('Say as what it goes in.').waitFor();
    await dialog().getByText('Read what changes, then tick here.').waitFor();
    await dialog().getByText('Milk couverture in addition to the recipe').waitFor();
    await dialog().getByLabel('In place of').selectOption({ label: couverture });
    await dialog().getByText('not known → contains').waitFor();
  });

  step('puts a lot in beside the recipe only after reading what it changes', async () => {
    await dialog().getByLabel('In place of').selectOption({ index: 0 });
    await dialog().getByText('not known → contains').waitFor();
    await dialog().getByLabel(/^As/).selectOption('base');
    await dialog()
      .getByLabel(/^I have read what changes/)
      .check();
    await dialog()
      .getByLabel(/^Why something outside/)
      .fill('a milder trial');
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog().waitFor({ state: 'detached' });
    await story.page
      .getByRole('row')
      .filter({ hasText: 'a milder trial' })
      .filter({ hasText: otherLot })
      .waitFor();
    await story.page.getByRole('button', { name: `Weigh in ${couverture}` }).click();
  });

  step('is not let in with a code that nobody knows', async () => {
    await dialog()
      .getByLabel(/^Another lot/)
      .fill('nothing-of-ours');
    await dialog().getByRole('alert').first().waitFor();
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog()
      .getByText(/nobody knows whether it is what the recipe asks for/)
      .waitFor();
    await dialog().getByRole('button', { name: 'Close' }).click();
    await dialog().waitFor({ state: 'detached' });
  });
});
