import type { RunningService } from '../support/service/test-service';
import { rowsOf } from './support/demo-facts';
import { makePlan, writeOrder } from './support/planning';
import { openDemoStory, step, type Story } from './support/story';

jest.setTimeout(300_000);

const BOX = 'Box of nine, assorted';

let story: Story<RunningService>;

beforeAll(async () => {
  story = await openDemoStory('maker');
}, 600_000);
afterAll(() => story.end());

const room = (name: string) =>
  story.page
    .getByRole('navigation', { name: 'Out', exact: true })
    .getByRole('link', { name, exact: true })
    .click();
const register = (name: string) => story.page.getByRole('table', { name, exact: true });

describe('a maker who plans', () => {
  step('writes an order for a day', () =>
    writeOrder(story, { note: 'for the tea room', inDays: 20, box: BOX, count: '60' }),
  );

  step('has it planned back to what to cook, cast and pack, and when', async () => {
    const { page } = story;
    await makePlan(story);
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
    await writeOrder(story, { note: 'far too many', inDays: 3, box: BOX, count: '600' });
    await makePlan(story);
    const short = page.getByRole('region', { name: 'What can’t be met, and why' });
    await short
      .getByText(/^Not everything that is asked fits: \d+ demands? goe?s? short/)
      .waitFor();
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
    await makePlan(story);
    await page.getByText('far too many').waitFor({ state: 'detached' });
    await register('Ways out').waitFor({ state: 'detached' });
  });
});
