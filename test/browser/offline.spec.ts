import { openKitchen } from '../support/workshop/kitchen';
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
