import type { Page } from 'playwright-core';
import { addItem, addSpecification, addSupplier } from '../support/workshop/fixtures';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;

beforeAll(async () => {
  story = await openStory('maker');
  const { service } = story;
  const { id: dairy } = await addSupplier(service, 'Dairy of the example');
  const butter = await addItem(service, { name: 'Butter', kind: 'ingredient' });
  await addSpecification(service, butter.id, dairy);
});
afterAll(() => story.end());

/** What the keyboard is at: its visible label or its name. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return '';
    const label = at instanceof HTMLInputElement || at instanceof HTMLSelectElement;
    const text = label ? at.labels?.[0]?.textContent : at.textContent;
    return at.getAttribute('aria-label') ?? text ?? '';
  });

/** Tabs on until the keyboard is there, as somebody without a mouse does. */
const tabTo = async (page: Page, name: RegExp, key = 'Tab'): Promise<void> => {
  for (let presses = 0; presses < 60; presses += 1) {
    if (name.test((await focused(page)).trim())) return;
    await page.keyboard.press(key);
  }
  throw new Error(`the Tab key never comes to ${String(name)}`);
};

describe('somebody without a mouse', () => {
  step('jumps over the head of the page, and back to the scan field with /', async () => {
    const { page } = story;
    await page.goto('/goods-in');
    await page.getByRole('link', { name: 'Take goods in' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await focused(page)).toMatch(/content/i);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true);
    await page.keyboard.press('/');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('scan');
  });

  step('takes a delivery in from the first field to the last', async () => {
    const { page } = story;
    await tabTo(page, /^Take goods in$/);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Take goods in' }).waitFor();
    await tabTo(page, /^Supplier\s*\*/);
    await page.keyboard.type('Dairy');
    await tabTo(page, /^Item\s*\*/);
    await page.keyboard.type('Butter');
    await page.getByRole('option', { name: 'Butter' }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await tabTo(page, /^Supplier’s lot/);
    await page.keyboard.type('BU-1');
    await tabTo(page, /^best before$/);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await page.getByRole('radio', { name: 'none' }).isChecked()).toBe(true);
    await tabTo(page, /^Quantity/);
    await page.keyboard.type('2500');
    await tabTo(page, /^Price of the whole line/);
    await page.keyboard.type('20');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'On this delivery so far' }).waitFor();
    await tabTo(page, /^Book the delivery$/);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /^Delivery of/ }).waitFor();
  });

  step('opens a dialog that keeps the keyboard, closes it with Escape and is back', async () => {
    const { page } = story;
    await page.getByRole('table').getByRole('link').first().focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Butter' }).waitFor();
    await tabTo(page, /^Put on hold$/);
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    for (let presses = 0; presses < 8; presses += 1) {
      await page.keyboard.press('Tab');
      expect(
        await page.evaluate(() => document.activeElement?.closest('[role="dialog"]') !== null),
      ).toBe(true);
    }
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    await page.waitForFunction(() => document.activeElement?.textContent === 'Put on hold');
  });
});
