import type { RunningService } from '../../support/service/test-service';
import { pick, type Story } from './story';

type DemoStory = Story<RunningService>;

export const dayIn = (days: number): string =>
  new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

/** Goes to a place below Out, from wherever the person stands. */
const goTo = async ({ page }: DemoStory, name: string): Promise<void> => {
  await page.getByRole('link', { name: /^Out/ }).click();
  await page
    .getByRole('navigation', { name: 'Out', exact: true })
    .getByRole('link', { name, exact: true })
    .click();
};

/** Writes an order of a box in its dialog, and finds it in the list by its note. */
export const writeOrder = async (
  story: DemoStory,
  order: {
    readonly note: string;
    readonly inDays: number;
    readonly box: string;
    readonly count: string;
  },
): Promise<void> => {
  await goTo(story, 'Orders');
  const { page } = story;
  await page.getByRole('button', { name: 'Write an order' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel(/^Customer/).selectOption({ label: 'Hotel Tidewater' });
  await dialog.getByLabel(/^Due/).fill(dayIn(order.inDays));
  await pick(dialog, /^What/, order.box);
  await dialog.getByLabel(/^How many/).fill(order.count);
  await dialog.getByLabel(/^Note/).fill(order.note);
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('listitem').filter({ hasText: order.note }).first().waitFor();
};

/** Makes a new plan and waits until it is the one on screen. @throws Error when it is refused */
export const makePlan = async (story: DemoStory): Promise<void> => {
  await goTo(story, 'Plan');
  const { page } = story;
  const answer = page.waitForResponse(
    (one) => one.url().endsWith('/api/plan') && one.request().method() === 'POST',
    { timeout: 120_000 },
  );
  await page.getByRole('button', { name: 'Make a new plan' }).click();
  if (!(await answer).ok()) throw new Error('the plan was refused');
  await page.waitForLoadState('networkidle');
  await page.getByText(/^Made /).waitFor();
};
