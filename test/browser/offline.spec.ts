import { openKitchen } from '../support/workshop/kitchen';
import { accessibilityFaults } from './support/accessibility';
import type { Device } from './support/browser';
import { openStory, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let device: Device;

beforeAll(async () => {
  story = await openStory('maker');
  device = story.device;
  const kitchen = await openKitchen(story.service);
  await kitchen.receive(kitchen.couverture, '1000');
});
afterAll(() => story.end());

const cleanings = async (): Promise<number> => {
  const answer = await device.context.request.get('/api/diary', {
    params: { from: day(-1), to: day(0) },
  });
  const { days } = (await answer.json()) as {
    days: { entries: { kind: string; what: string; subject: string }[] }[];
  };
  return days
    .flatMap(({ entries }) => entries)
    .filter((entry) => `${entry.what}${entry.subject}`.includes('slab')).length;
};

const day = (from: number): string =>
  new Date(Date.now() + from * 86_400_000).toISOString().slice(0, 10);

const bookCleaning = async (what: string): Promise<void> => {
  const { page } = device;
  await page.getByRole('button', { name: 'Write a cleaning' }).click();
  await page
    .getByRole('dialog')
    .getByLabel(/^What was cleaned/)
    .fill(what);
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
};

const room = (name: string) =>
  device.page.getByRole('link', { name: new RegExp(`^${name}`) }).first();
const title = (name: string) => device.page.getByRole('heading', { level: 1, name, exact: true });

/** Once the worker has what was fetched before it came. */
const isKept = (): Promise<unknown> =>
  device.page.waitForFunction(
    async () => {
      const kept = await (await caches.open('ballotin-app-1')).keys();
      const paths = kept.map(({ url }) => new URL(url).pathname);
      return paths.includes('/') && paths.some((path) => path.includes('/camera-'));
    },
    undefined,
    { timeout: 60_000, polling: 500 },
  );

describe('a tablet that was opened once with the network, and only on Today', () => {
  it('opens the bench without it, after a reload too', async () => {
    const { page, context } = device;
    await title('Today').waitFor();
    await isKept();
    await context.setOffline(true);
    await page.reload();
    await title('Today').waitFor();
    for (const name of ['Goods in', 'Store', 'Kitchen', 'Moulding', 'Packing', 'Out', 'Diary']) {
      await room(name).click();
      await page.waitForURL((url) => url.pathname !== '/');
      await page.getByRole('heading', { level: 1 }).waitFor();
      expect(await title('This screen is not on this device yet').count()).toBe(0);
    }
    await page.getByRole('button', { name: 'Write a cleaning' }).waitFor();
  });

  it('says of a screen that it never had what is the matter, and goes on from there', async () => {
    const { page, context } = device;
    await room('Prices').click();
    await title('This screen is not on this device yet').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole('link', { name: 'Back to Today' }).click();
    await title('Today').waitFor();
    await room('Recipes').click();
    await title('This screen is not on this device yet').waitFor();
    await context.setOffline(false);
    await title('Recipes').waitFor();
    await room('Prices').click();
    await title('Prices').waitFor();
  });

  it('says of what it never saw that nothing can be shown, and shows it later', async () => {
    const { page, context } = device;
    await context.setOffline(true);
    await page.goto('/store/lots/NEVER-SEEN');
    await page
      .getByText(/this was never seen on this device/)
      .first()
      .waitFor();
    await context.setOffline(false);
    await page
      .getByText(/NEVER-SEEN/)
      .first()
      .waitFor();
    await page.getByText(/this was never seen on this device/).waitFor({ state: 'detached' });
  });
});

describe('a tablet that loses the network', () => {
  it('keeps bookings, shows them, survives a reload, and sends each once and in order', async () => {
    const { page, context } = device;
    await page.goto('/diary');
    await page.getByRole('heading', { level: 1, name: 'Diary' }).waitFor();
    // The second visit is served through the worker that keeps the app for days without network.
    await page.reload();
    await page.getByRole('button', { name: 'Write a cleaning' }).waitFor();
    await context.setOffline(true);
    await bookCleaning('slab one');
    await bookCleaning('slab two');
    await page.getByText('2 bookings wait on this device').waitFor();
    await page.reload();
    await page.getByText('2 bookings wait on this device').waitFor();
    await context.setOffline(false);
    await page.goto('/waiting');
    // They go one after the other: until the last is through, this screen lists what still waits.
    await page.getByText('Nothing waits: everything is booked.').waitFor({ timeout: 40_000 });
    expect(await cleanings()).toBe(2);
  });

  it('explains a booking that things overtook, and lets the person give it up', async () => {
    const { page, context } = device;
    const lots = (await (
      await context.request.get('/api/lots?state=on_hand&kind=ingredient&limit=1')
    ).json()) as {
      items: { code: string }[];
    };
    const code = lots.items[0]?.code ?? '';
    await page.goto(`/store/lots/${code}`);
    await page.getByRole('button', { name: 'Count or throw away' }).click();
    await page.getByRole('dialog').getByText('Thrown away').click();
    await page
      .getByRole('dialog')
      .getByLabel(/^Quantity/)
      .fill('999999999');
    await page
      .getByRole('dialog')
      .getByLabel(/^Reason/)
      .fill('dropped');
    await context.setOffline(true);
    await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
    await page.getByText('1 booking waits on this device').waitFor();
    await context.setOffline(false);
    await page.getByText('1 was refused').waitFor({ timeout: 40_000 });
    await page.getByRole('link', { name: 'Look' }).click();
    await page.getByRole('alert').waitFor();
    await page.getByRole('button', { name: 'Give it up' }).click();
    await page.getByText('Nothing waits: everything is booked.').waitFor();
  });
});
