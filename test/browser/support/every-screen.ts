import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { RunningService } from '../../support/service/test-service';
import { accessibilityFaults } from './accessibility';
import { openDevice, signIn, SIZES, type Size } from './browser';
import { personOf, startDemoShop } from './demo-shop';
import { screensOf } from './screens';

// Every screen at three sizes in both languages: it opens without a fault of its own, every word of
// the service has its wording, axe finds nothing, nothing sticks out sideways. `npm run screenshots` also keeps the pictures in
// test/artifacts/screens to be looked at.
jest.setTimeout(1_800_000);

const FOLDER = join(__dirname, '..', '..', 'artifacts', 'screens');
const KEEP_PICTURES = process.env['SCREENSHOTS'] !== undefined;
const owner = personOf('owner');
let service: RunningService;

const IDS = /[0-9a-f]{8}-[0-9a-f-]{27}/gi;
const nameOf = (path: string): string =>
  path
    .replace(IDS, 'one')
    .replace(/[^a-z0-9]+/gi, '-')
    .replace(/^-|-$/g, '') || 'today';

const open = async (page: Page, path: string): Promise<void> => {
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForLoadState('networkidle');
};

const lookAt = async (page: Page, size: Size, picture: string): Promise<string[]> => {
  await page.setViewportSize(size);
  if (KEEP_PICTURES) await page.screenshot({ path: join(FOLDER, picture), fullPage: true });
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - window.innerWidth,
  );
  const faults = await accessibilityFaults(page);
  return sideways > 1 ? [...faults, `sticks out by ${String(sideways)} px`] : faults;
};

const walk = async (locale: string): Promise<string[]> => {
  const device = await openDevice(service.origin, SIZES[0] ?? { width: 390, height: 844 }, locale);
  const { page } = device;
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`${page.url()}: ${error.message}`));
  page.on('console', (line) => {
    if (line.text().startsWith('No wording in')) faults.push(`${page.url()}: ${line.text()}`);
  });
  try {
    await signIn(page, owner.name, owner.password);
    for (const [position, path] of (await screensOf(device.context.request)).entries()) {
      await open(page, path);
      for (const size of SIZES) {
        const number = String(position + 1).padStart(2, '0');
        const picture = `${number}-${nameOf(path)}.${size.name}.${locale.slice(0, 2)}.png`;
        const found = await lookAt(page, size, picture);
        faults.push(...found.map((fault) => `${path} on a ${size.name}: ${fault}`));
      }
    }
  } finally {
    await device.close();
  }
  return faults;
};

/** Opens every screen in one language and lists what is wrong with it. */
export const everyScreen = (locale: string): void => {
  beforeAll(async () => {
    mkdirSync(FOLDER, { recursive: true });
    service = await startDemoShop();
  }, 900_000);
  afterAll(() => service.close());

  it('opens clean at three sizes', async () => {
    expect(await walk(locale)).toEqual([]);
  });
};
