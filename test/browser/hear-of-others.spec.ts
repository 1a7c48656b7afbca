import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { BenchHands, type BatchBody } from '../support/workshop/bench';
import type { Device } from './support/browser';
import { deviceOf, openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let other: Device;
let batch: BatchBody;
let couverture: string;
let cream: string;

/** Within how many milliseconds one tablet shows what another booked. */
const SOON = { timeout: 12_000 };

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  couverture = await kitchen.receive(kitchen.couverture, '5000');
  cream = await kitchen.receive(kitchen.cream, '1000');
  batch = await new BenchHands(story.service).open(kitchen.ganache);
  other = await deviceOf(story.service, 'maker');
});
afterAll(async () => {
  await other.close();
  await story.end();
});

describe('two tablets at one batch', () => {
  step('see each other’s weighings within seconds, without a touch', async () => {
    for (const { page } of [story, other]) {
      await page.goto(`/kitchen/batches/${batch.id}`);
      await page.locator('#bench-scan').waitFor();
    }
    await scan(other.page, couverture);
    const dialog = other.page.getByRole('dialog');
    await dialog.getByLabel(/^Quantity/).fill('321');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
    await story.page.getByRole('cell', { name: /^321\s/ }).waitFor(SOON);
  });

  step('lose nothing that is being typed meanwhile', async () => {
    await scan(story.page, cream);
    const dialog = story.page.getByRole('dialog');
    const quantity = dialog.getByLabel(/^Quantity/);
    await quantity.fill('123');
    await scan(other.page, couverture);
    const theirs = other.page.getByRole('dialog');
    await theirs.getByLabel(/^Quantity/).fill('45');
    await theirs.getByRole('button', { name: 'Weigh in' }).click();
    await theirs.waitFor({ state: 'detached' });
    await story.page.getByRole('cell', { name: /^45\s/, includeHidden: true }).waitFor({
      ...SOON,
      state: 'attached',
    });
    expect(await quantity.inputValue()).toBe('123');
    expect(await quantity.evaluate((field) => field === document.activeElement)).toBe(true);
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
    await other.page.getByRole('cell', { name: /^123\s/ }).waitFor(SOON);
  });
});

describe('a tablet at another place', () => {
  step('sees the stock that is left and the batches in hand', async () => {
    const { page } = other;
    await page.goto(`/store/lots/${couverture}`);
    await page.getByText('4.634 kg', { exact: true }).first().waitFor();
    const bench = new BenchHands(story.service);
    await bench.draw(batch, { lotCode: couverture, quantity: '34' }).expect(201);
    await page.getByText('4.6 kg', { exact: true }).first().waitFor(SOON);
    const inKitchen = page.getByRole('link', { name: /^Kitchen/ });
    await inKitchen.filter({ hasText: '1 waits' }).waitFor();
    await bench.open(kitchen.ganache);
    await inKitchen.filter({ hasText: '2 wait' }).waitFor(SOON);
  });

  step('is told nothing while nobody looks, and all of it on the next look', async () => {
    const { page, context } = other;
    const asked: string[] = [];
    page.on('request', (request) => {
      if (request.url().endsWith('/api/changes')) asked.push(request.url());
    });
    await context.setOffline(true);
    await page.waitForFunction(() => !navigator.onLine);
    asked.length = 0;
    await page.waitForTimeout(7000);
    expect(asked).toEqual([]);
    await new BenchHands(story.service)
      .draw(batch, { lotCode: couverture, quantity: '100' })
      .expect(201);
    await context.setOffline(false);
    await page.getByText('4.5 kg', { exact: true }).first().waitFor(SOON);
  });
});
