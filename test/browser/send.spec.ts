import { BenchHands } from '../support/workshop/bench';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { deviceOf, isPdf, openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let boxes: string;

/** What earlier jobs made: twelve boxes of four. */
const packTwelve = async (): Promise<string> => {
  const hands = new BenchHands(story.service);
  const couverture = await kitchen.receive(kitchen.couverture, '5000');
  const cream = await kitchen.receive(kitchen.cream, '1000');
  const cartons = await kitchen.receive(kitchen.carton, '100');
  const made = async (itemId: string, draws: readonly object[], quantity: string) => {
    const batch = await hands.make(itemId, draws, { outputs: [{ quantity }] });
    return batch.outputs[0]?.lotCode ?? '';
  };
  const ganache = await made(
    kitchen.ganache,
    [
      { lotCode: cream, quantity: '480' },
      { lotCode: couverture, quantity: '600' },
    ],
    '1080',
  );
  const pieces = await made(
    kitchen.piece,
    [
      { lotCode: couverture, quantity: '288', role: 'shell' },
      { lotCode: ganache, quantity: '240', role: 'filling' },
    ],
    '48',
  );
  return made(
    kitchen.box,
    [
      { lotCode: pieces, quantity: '48' },
      { lotCode: cartons, quantity: '12' },
    ],
    '12',
  );
};

beforeAll(async () => {
  story = await openStory('seller');
  kitchen = await openKitchen(story.service);
  boxes = await packTwelve();
});
afterAll(() => story.end());

const boxesLeft = async (): Promise<number> => {
  const lot = await story.service.as.seller.get(`/lots/${boxes}`).expect(200);
  return Number((lot.body as { onHandQuantity: string }).onHandQuantity);
};

const dialog = () => story.page.getByRole('dialog');

describe('a seller', () => {
  step('writes a new customer down', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Workshop', exact: true }).click();
    await page.getByRole('link', { name: 'Customers' }).click();
    await page.getByRole('button', { name: 'Add a customer' }).click();
    await dialog().getByLabel(/^Name/).fill('Hotel of the example');
    await dialog().getByRole('button', { name: 'Save' }).click();
    await page.getByRole('cell', { name: 'Hotel of the example', exact: true }).waitFor();
  });

  step('scans a box and sends five of them to the customer', async () => {
    const { page } = story;
    await page.getByRole('link', { name: /^Out/ }).click();
    await page.getByRole('link', { name: 'Send out' }).click();
    await page.getByText('a customer', { exact: true }).click();
    await page.getByLabel(/^Customer/).selectOption({ label: 'Hotel of the example' });
    await scan(page, boxes);
    await page.getByLabel(/^How many/).fill('5');
    await page.getByRole('button', { name: 'Book it' }).click();
    await page.getByRole('heading', { level: 1, name: 'Out' }).waitFor();
    const row = page.getByRole('row').filter({ hasText: 'Hotel of the example' });
    await row.getByText(new RegExp(boxes)).waitFor();
  });

  step('prints the delivery note', async () => {
    const { page, device } = story;
    const note = page.getByRole('link', { name: 'Delivery note' }).first();
    expect(await isPdf(device, note)).toBe(true);
  });

  step('is told at the line that so many are not here', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Send out' }).click();
    await scan(page, boxes);
    await page.getByLabel(/^How many/).fill('8');
    await page.getByRole('button', { name: 'Book it' }).click();
    await page.getByRole('alert').getByText(new RegExp(boxes)).waitFor();
  });

  step('sells two over the counter, each scan counting one', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Remove' }).click();
    await scan(page, boxes);
    await page.getByLabel(/^How many/).waitFor();
    await scan(page, boxes);
    await page.waitForFunction(() => {
      const field = document.querySelector<HTMLInputElement>('.figure-input');
      return field?.value === '2';
    });
    await page.getByRole('button', { name: 'Book it' }).click();
    await page.getByRole('heading', { level: 1, name: 'Out' }).waitFor();
    const counter = page.getByRole('region', { name: 'Counter, day by day' });
    await counter.getByRole('row').filter({ hasText: '2' }).first().waitFor();
  });

  step('takes one back from the customer and throws it away, for a reason', async () => {
    const { page } = story;
    const row = page.getByRole('row').filter({ hasText: 'Hotel of the example' });
    await row.getByRole('button', { name: 'Take back' }).click();
    await dialog()
      .getByLabel(/^How many/)
      .fill('1');
    await dialog().getByText('thrown away', { exact: true }).click();
    await dialog()
      .getByLabel(/^Reason/)
      .fill('dented');
    await dialog().getByRole('button', { name: 'Take back' }).click();
    await dialog().waitFor({ state: 'detached' });
    expect(await boxesLeft()).toBe(5);
  });
});

describe('two tablets that sell the same last boxes', () => {
  step('book once: the second is told that they are gone', async () => {
    const { service, page } = story;
    const other = await deviceOf(service, 'seller');
    try {
      for (const one of [page, other.page]) {
        await one.goto(`/out/new?lot=${boxes}`);
        await one.getByLabel(/^How many/).fill('4');
      }
      const book = (one: typeof page) => one.getByRole('button', { name: 'Book it' }).click();
      await Promise.all([book(page), book(other.page)]);
      const outcomes = await Promise.all(
        [page, other.page].map((one) =>
          Promise.race([
            one
              .getByRole('heading', { level: 1, name: 'Out', exact: true })
              .waitFor()
              .then(() => 'booked'),
            one
              .getByRole('alert')
              .first()
              .waitFor()
              .then(() => 'refused'),
          ]),
        ),
      );
      expect([...outcomes].sort()).toEqual(['booked', 'refused']);
      expect(await boxesLeft()).toBe(1);
    } finally {
      await other.close();
    }
  });
});
