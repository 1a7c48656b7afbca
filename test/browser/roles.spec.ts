import type { Page } from 'playwright-core';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import type { Device } from './support/browser';
import { deviceOf, openStory, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let lot: string;
let seller: Device;
let auditor: Device;

beforeAll(async () => {
  story = await openStory('owner');
  kitchen = await openKitchen(story.service);
  lot = await kitchen.receive(kitchen.couverture, '1000');
  await story.service.as.maker.post(`/lots/${lot}/holds`, { reason: 'torn bag' }).expect(201);
  seller = await deviceOf(story.service, 'seller');
  auditor = await deviceOf(story.service, 'auditor');
});
afterAll(async () => {
  await seller.close();
  await auditor.close();
  await story.end();
});

const openLot = async (page: Page): Promise<void> => {
  await page.goto(`/store/lots/${lot}`);
  await page.getByRole('region', { name: 'Holds' }).getByText('torn bag').waitFor();
};

describe('what a person is offered', () => {
  it('lets only the owner let a held lot go, warned and with a reason', async () => {
    for (const page of [seller.page, auditor.page]) {
      await openLot(page);
      expect(await page.getByRole('button', { name: 'Let it go' }).count()).toBe(0);
    }
    const { page } = story;
    await openLot(page);
    await page.getByRole('button', { name: 'Let it go' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText(/ask your food authority first/).waitFor();
    await dialog.getByRole('button', { name: 'Let it go' }).click();
    await dialog.getByText('Say why in a few words.').waitFor();
    await dialog.getByLabel(/^Reason/).fill('bag whole inside');
    await dialog.getByRole('button', { name: 'Let it go' }).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByText(/let go by The owner/).waitFor();
  });

  it('shows a reader everything and offers no booking anywhere', async () => {
    const { page } = auditor;
    const offers: Readonly<Record<string, RegExp>> = {
      '/goods-in': /Take goods in/,
      '/kitchen': /Start a filling/,
      '/moulding': /Start casting/,
      '/packing': /Start packing/,
      '/out': /Send out/,
      '/recipes': /Add a filling/,
      '/workshop/suppliers': /Add a supplier/,
    };
    for (const [path, offer] of Object.entries(offers)) {
      await page.goto(path);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await page.waitForLoadState('networkidle');
      expect(await page.getByRole('link', { name: offer }).count()).toBe(0);
      expect(await page.getByRole('button', { name: offer }).count()).toBe(0);
    }
  });

  it('tells somebody without the right so, whatever address they type', async () => {
    const { page } = seller;
    await page.goto('/workshop');
    await page.getByText('Only the owner changes these.').waitFor();
    await page.goto('/goods-in/new');
    await page.getByRole('heading', { level: 1, name: 'Take goods in' }).waitFor();
    const refused = await seller.context.request.post('/api/deliveries', { data: {} });
    expect(refused.status()).toBe(403);
  });
});
