import type { RunningService } from '../support/service/test-service';
import { rowsOf } from './support/demo-facts';
import { openDemoStory, pick, step, type Story } from './support/story';

jest.setTimeout(300_000);

const BOX = 'Box of nine, assorted';

let story: Story<RunningService>;

beforeAll(async () => {
  story = await openDemoStory('maker');
}, 600_000);
afterAll(() => story.end());

const dayIn = (days: number): string =>
  new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const room = (name: string) =>
  story.page
    .getByRole('navigation', { name: 'Out', exact: true })
    .getByRole('link', { name, exact: true })
    .click();
const register = (name: string) => story.page.getByRole('table', { name, exact: true });

const writeOrder = async (note: string, inDays: number, boxes: string): Promise<void> => {
  const { page } = story;
  await page.getByRole('link', { name: /^Out/ }).click();
  await room('Orders');
  await page.getByRole('button', { name: 'Write an order' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel(/^Customer/).selectOption({ label: 'Hotel Tidewater' });
  await dialog.getByLabel(/^Due/).fill(dayIn(inDays));
  await pick(dialog, /^What/, BOX);
  await dialog.getByLabel(/^How many/).fill(boxes);
  await dialog.getByLabel(/^Note/).fill(note);
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('listitem').filter({ hasText: note }).first().waitFor();
};

const makePlan = async (): Promise<void> => {
  const { page } = story;
  await room('Plan');
  const before = await page.getByText(/^Made /).allInnerTexts();
  const answer = page.waitForResponse(
    (one) => one.url().endsWith('/api/plan') && one.request().method() === 'POST',
  );
  await page.getByRole('button', { name: 'Make a new plan' }).click();
  expect((await answer).ok()).toBe(true);
  if (before.length === 0) await page.getByText(/^Made /).waitFor();
};

describe('a maker who plans', () => {
  step('writes an order for a day', () => writeOrder('for the tea room', 20, '60'));

  step('has it planned back to what to cook, cast and pack, and when', async () => {
    const { page } = story;
    await makePlan();
    const calendar = page.getByRole('region', { name: 'Calendar' });
    await calendar.getByText('pack', { exact: true }).first().waitFor();
    const steps = await calendar
      .locator('.planned')
      .evaluateAll((all) => all.map((one) => one.textContent));
    for (const name of ['cookRaspberry ganache', 'castRaspberry heart', `pack${BOX}`])
      expect(
        steps.some((text) => text.replaceAll(/\s/g, '').startsWith(name.replaceAll(/\s/g, ''))),
      ).toBe(true);
  });

  step('reads what to buy, from whom and by when', async () => {
    const rows = await rowsOf(register('Shopping list'));
    const cream = rows.find(([, item]) => item === 'Cream 35 %');
    expect(cream?.[0]).toBe('Hollowbrook Dairy');
    expect(cream?.[4]).toMatch(/^[A-Z][a-z]{2},? \d/);
  });

  step('starts a batch from it and finds it in the kitchen', async () => {
    const { page } = story;
    const start = page.getByRole('button', { name: /^Start .*(ganache|caramel|praline)/ }).first();
    const filling = ((await start.getAttribute('aria-label')) ?? '').replace(/^Start /, '');
    await start.click();
    const told = page.getByText(/^\W*started: /).first();
    const code = ((await told.innerText()).split('started: ')[1] ?? '').trim();
    await page.getByRole('link', { name: /^Kitchen/ }).click();
    await page.getByRole('row').filter({ hasText: code }).getByText(filling).waitFor();
  });

  step('is told of an order that can’t be met, why, and the ways out', async () => {
    const { page } = story;
    await writeOrder('far too many', 3, '600');
    await makePlan();
    const short = page.getByRole('region', { name: 'What can’t be met, and why' });
    const line = short.getByRole('listitem').filter({ hasText: BOX });
    await line
      .getByText(/Missing \d/)
      .first()
      .waitFor();
    expect(await line.first().innerText()).toMatch(
      /moulds|working time|working days|delivery time/,
    );
    await register('Ways out').waitFor();
    const ways = await rowsOf(register('Ways out'));
    expect(ways.map(([way]) => way)).toContain('Send what there is');
    const costs = ways.map(([, cost = '']) => Number(cost.replaceAll(/[^\d.]/g, '')));
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
  });

  step('calls that order off, and the next plan holds', async () => {
    const { page } = story;
    await room('Orders');
    const order = page.getByRole('listitem').filter({ hasText: 'far too many' }).first();
    await order.getByRole('button', { name: 'Cancel the order' }).click();
    await order.getByText('cancelled').waitFor();
    await makePlan();
    await page.getByText('far too many').waitFor({ state: 'detached' });
    await register('Ways out').waitFor({ state: 'detached' });
  });
});
