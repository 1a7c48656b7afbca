import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { chromium, type BrowserContext, type Page } from 'playwright-core';

/** Where Debian, Ubuntu and most others put it; CHROMIUM names another. */
const EXECUTABLE = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface Size {
  readonly name: 'phone' | 'tablet' | 'desktop';
  readonly width: number;
  readonly height: number;
}

/** The tablet at the bench, on which most stories play. */
export const TABLET: Size = { name: 'tablet', width: 1024, height: 768 };

export const SIZES: readonly Size[] = [
  { name: 'phone', width: 390, height: 844 },
  TABLET,
  { name: 'desktop', width: 1440, height: 900 },
];

export interface Device {
  readonly context: BrowserContext;
  readonly page: Page;
  close(): Promise<void>;
}

const LAST_LOOKS = join(__dirname, '..', '..', 'artifacts', 'last-looks');

/** Keeps what the device showed last: the first thing to look at when a story fails. */
const keepLastLook = async (page: Page): Promise<void> => {
  mkdirSync(LAST_LOOKS, { recursive: true });
  const story = basename(expect.getState().testPath ?? 'story', '.spec.ts');
  const path = join(LAST_LOOKS, `${story}.png`);
  await page.screenshot({ path, fullPage: true }).catch(() => undefined);
};

/** One device with a profile of its own: its cookies, waiting bookings and caches. */
export const openDevice = async (
  origin: string,
  { width, height }: Pick<Size, 'width' | 'height'>,
  locale = 'en-GB',
): Promise<Device> => {
  const profile = mkdtempSync(join(tmpdir(), 'ballotin-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: EXECUTABLE,
    headless: true,
    args: ARGUMENTS,
    viewport: { width, height },
    locale,
    baseURL: origin,
    reducedMotion: 'reduce',
  });
  const page = context.pages()[0] ?? (await context.newPage());
  page.setDefaultTimeout(30_000);
  return {
    context,
    page,
    close: async () => {
      await keepLastLook(page);
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
};

/** Signs in through the door that everybody uses. */
export const signIn = async (page: Page, name: string, password: string): Promise<void> => {
  await page.goto('/');
  await page.getByLabel(/^(Name|Nom)/).fill(name);
  await page.getByLabel(/^(Password|Mot de passe)/).fill(password);
  await page.getByRole('button', { name: /^(Sign in|S’identifier)$/ }).click();
  await page.getByRole('search').waitFor();
};
