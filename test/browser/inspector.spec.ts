import { allText, readPdf } from '../support/papers/read-pdf';
import type { RunningService } from '../support/service/test-service';
import { rowsOf } from './support/demo-facts';
import { bytesOf, openDemoStory, step, type Story } from './support/story';

jest.setTimeout(300_000);

let story: Story<RunningService>;

beforeAll(async () => {
  story = await openDemoStory('auditor');
}, 600_000);
afterAll(() => story.end());

/** Buttons that only look: they sort, print, change the language, choose or save a table. */
const LOOKS = /^(Trace|Reckon|Open the keypad.*|Picture|Table|Save as CSV|Show more|.*camera.*)$/i;

const bookings = async (): Promise<string[]> => {
  const { page } = story;
  await page.waitForLoadState('networkidle');
  const names = await page
    .getByRole('main')
    .locator('button:not(th button), .button-link-main')
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? one.textContent));
  return names.map((name) => name.trim()).filter((name) => !LOOKS.test(name));
};

describe('an inspector who was given an account to look with', () => {
  step('reads the diary day by day: temperatures, mould checks, holds, who did it', async () => {
    const { page } = story;
    await page.getByRole('link', { name: 'Diary', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Diary' }).waitFor();
    await page.getByRole('figure').waitFor();
    const entries = await rowsOf(page.locator('main table.register').first());
    expect(entries.length).toBeGreaterThan(0);
    const all = await page.getByRole('main').innerText();
    expect(all).toMatch(/B-\d{6}-\w{4} Dark ganache/);
    expect(all).toMatch(/D-\d{6}-\w{4} Hotel Tidewater/);
    for (const word of ['CHIPPED', 'Notice of Orrinfield Nut Mill', 'Fridge', 'Matthis'])
      expect(all).toContain(word);
  });

  step('looks six weeks back and takes it along as a paper', async () => {
    const { page, device } = story;
    const from = new Date(Date.now() - 41 * 86_400_000).toISOString().slice(0, 10);
    await page.getByLabel(/^From/).fill(from);
    const first = page.getByRole('heading', { level: 2 }).last();
    await first.waitFor();
    const paper = readPdf(
      await bytesOf(device, page.getByRole('link', { name: /^Diary \(PDF\)/ })),
      'diary',
    );
    const text = allText(paper);
    expect(paper.language).toBe('en');
    for (const word of ['Zellemoor Chocolate Workshop', 'Fridge', 'Matthis', 'CHIPPED'])
      expect(text).toContain(word);
  });

  step('is shown every room and offered nothing to book in any of them', async () => {
    const { page } = story;
    const rooms = page.getByRole('navigation').getByRole('link');
    const names = ['Goods in', 'Store', 'Kitchen', 'Moulding', 'Packing', 'Out'];
    for (const name of [...names, 'Trace', 'Recipes', 'Prices', 'Diary', 'Today']) {
      await rooms
        .filter({ hasText: new RegExp(`${name}$|^${name}`) })
        .first()
        .click();
      await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
      expect([name, ...(await bookings())]).toEqual([name]);
    }
  });

  step('opens a lot and its trace, with the report but without a recall to open', async () => {
    const { page } = story;
    const held = page.getByRole('region', { name: 'On hold, and why' });
    await held.getByRole('link', { name: /^Hazelnuts, roasted/ }).click();
    await page.getByRole('link', { name: 'Trace it' }).waitFor();
    for (const name of ['Put on hold', 'Let it go', 'Count or throw away', 'Move'])
      expect(await page.getByRole('button', { name }).count()).toBe(0);
    await page.getByRole('link', { name: 'Trace it' }).click();
    const report = page.getByRole('link', { name: /Trace report/ });
    expect(allText(readPdf(await bytesOf(story.device, report), 'trace'))).toContain('Orrinfield');
    expect(await page.getByRole('link', { name: 'Open a recall from this' }).count()).toBe(0);
  });

  step('is refused by the service whatever is sent to it', async () => {
    const { request } = story.device.context;
    for (const path of ['/api/deliveries', '/api/dispatches', '/api/recalls', '/api/readings'])
      expect((await request.post(path, { data: {} })).status()).toBe(403);
  });
});
