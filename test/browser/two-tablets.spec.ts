import type { Page } from 'playwright-core';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import type { Device } from './support/browser';
import { deviceOf, openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let other: Device;
let lot: string;
let late: Page;

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  lot = await kitchen.receive(kitchen.couverture, '500');
  other = await deviceOf(story.service, 'maker');
});
afterAll(async () => {
  await other.close();
  await story.end();
});

const onHand = async (): Promise<string> => {
  const answer = await story.service.as.maker.get(`/lots/${lot}`).expect(200);
  return (answer.body as { onHandQuantity: string }).onHandQuantity;
};

/** Starts a batch of its own at one tablet and takes the lot in hand, ready to weigh in 400 g. */
const takeInHand = async (page: Page, ganache: string): Promise<void> => {
  await page.getByRole('link', { name: /^Kitchen/ }).click();
  await page.getByRole('link', { name: 'Start a filling' }).click();
  await page.getByRole('combobox', { name: /^What is made/ }).click();
  await page.getByRole('option', { name: ganache }).click();
  await page.getByLabel(/^How much/).fill('500');
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: ganache }).waitFor();
  await scan(page, lot);
  await page
    .getByRole('dialog')
    .getByLabel(/^Quantity/)
    .fill('400');
};

const outcomeAt = (page: Page): Promise<'booked' | 'refused'> => {
  const dialog = page.getByRole('dialog');
  return Promise.race([
    dialog.waitFor({ state: 'detached' }).then(() => 'booked' as const),
    dialog
      .getByRole('alert')
      .waitFor()
      .then(() => 'refused' as const),
  ]);
};

describe('two makers at two tablets with one bag of couverture', () => {
  step('weigh in more than it holds at once, and only one is booked', async () => {
    const answer = await story.service.as.maker.get(`/items/${kitchen.ganache}`).expect(200);
    const ganache = (answer.body as { name: string }).name;
    const pages = [story.page, other.page];
    for (const page of pages) await takeInHand(page, ganache);
    const outcomes = await Promise.all(
      pages.map(async (page) => {
        await page.getByRole('dialog').getByRole('button', { name: 'Weigh in' }).click();
        return outcomeAt(page);
      }),
    );
    expect([...outcomes].sort()).toEqual(['booked', 'refused']);
    late = outcomes[0] === 'refused' ? story.page : other.page;
    expect(await onHand()).toBe('100.000');
  });

  step('tell the one who was late how much is left of which lot', async () => {
    const alert = late.getByRole('dialog').getByRole('alert');
    expect((await alert.innerText()).replaceAll(/\s/g, ' ')).toContain(
      `Only 100 g of lot ${lot} left`,
    );
    expect(await late.getByRole('cell', { name: /^400\s/ }).count()).toBe(0);
  });

  step('let the late one take the rest, and nothing was booked by halves', async () => {
    const dialog = late.getByRole('dialog');
    await dialog.getByLabel(/^Quantity/).fill('100');
    await dialog.getByRole('button', { name: 'Weigh in' }).click();
    await dialog.waitFor({ state: 'detached' });
    await late.getByRole('cell', { name: /^100\s/ }).waitFor();
    expect(await onHand()).toBe('0.000');
  });
});
