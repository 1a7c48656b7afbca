import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { APIRequestContext, Page } from 'playwright-core';
import type { RunningService } from '../support/service/test-service';
import { accessibilityFaults } from './support/accessibility';
import { openDevice, signIn, SIZES, type Size } from './support/browser';
import { personOf, startDemoShop } from './support/demo-shop';

// Every screen at three sizes in both languages: it opens without a fault of its own, axe finds
// nothing, nothing sticks out sideways. The pictures stay in test/artifacts to be looked at.
jest.setTimeout(1_800_000);

const FOLDER = join(__dirname, '..', 'artifacts', 'screens');
const owner = personOf('owner');
let service: RunningService;

beforeAll(async () => {
  mkdirSync(FOLDER, { recursive: true });
  service = await startDemoShop();
}, 900_000);
afterAll(() => service.close());

const one = async (request: APIRequestContext, path: string, field: string): Promise<string> => {
  const answer = (await (await request.get(`/api/${path}`)).json()) as {
    items: Record<string, string>[];
  };
  return answer.items[0]?.[field] ?? '';
};

const screensOf = async (request: APIRequestContext): Promise<readonly string[]> => {
  const box = await one(request, 'lots?kind=box&state=on_hand&limit=1', 'code');
  const filling = await one(request, 'items?kind=filling&limit=1', 'id');
  const boxItem = await one(request, 'items?kind=box&limit=1', 'id');
  const ingredient = await one(request, 'items?kind=ingredient&limit=1', 'id');
  const cast = await one(request, 'batches?kind=cast&limit=1', 'id');
  const complaint = await one(request, 'complaints?limit=1', 'code');
  const delivery = await one(request, 'deliveries?limit=1', 'id');
  const mould = await one(request, 'moulds?limit=1', 'tag');
  return [
    ...['/', '/waiting', '/goods-in', '/goods-in/new', `/goods-in/${delivery}`, '/goods-in/items'],
    ...[
      `/goods-in/items/${ingredient}`,
      '/store',
      '/store/count',
      `/store/lots/${box}`,
      '/kitchen',
    ],
    ...['/kitchen/new?kind=piece', `/kitchen/batches/${cast}`, '/moulding', '/moulding/moulds'],
    ...['/moulding/tanks', '/packing', `/packing/labels/${box}`, '/out', '/out/new', '/out/orders'],
    ...['/out/plan', '/trace', `/trace/lots/${box}`, `/trace/moulds/${mould}`, '/trace/recalls'],
    ...['/trace/recalls/new', '/trace/complaints', `/trace/complaints/${complaint}`, '/recipes'],
    ...[`/recipes/${filling}`, `/recipes/${boxItem}`, '/prices', `/prices/${boxItem}`, '/diary'],
    ...['/workshop', '/workshop/people', '/workshop/suppliers', '/workshop/customers'],
    ...['/workshop/places', '/workshop/rates', '/workshop/data', '/found?text=nothing-here'],
  ];
};

const nameOf = (path: string): string =>
  path.replace(/[^a-z0-9]+/gi, '-').replace(/^-|-$/g, '') || 'today';

const lookAt = async (page: Page, path: string, file: string): Promise<string[]> => {
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForLoadState('networkidle');
  await page.screenshot({ path: join(FOLDER, file), fullPage: true });
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - window.innerWidth,
  );
  const faults = await accessibilityFaults(page);
  return [...faults, ...(sideways > 1 ? [`sticks out by ${String(sideways)} px`] : [])].map(
    (fault) => `${path}: ${fault}`,
  );
};

const walk = async (size: Size, locale: string): Promise<string[]> => {
  const device = await openDevice(service.origin, size, locale);
  const faults: string[] = [];
  try {
    device.page.on('pageerror', (error) => faults.push(`${device.page.url()}: ${error.message}`));
    await signIn(device.page, owner.name, owner.password);
    for (const path of await screensOf(device.context.request)) {
      const file = `${nameOf(path)}.${size.name}.${locale.slice(0, 2)}.png`;
      faults.push(...(await lookAt(device.page, path, file)));
    }
  } finally {
    await device.close();
  }
  return faults;
};

describe('every screen', () => {
  it.each(
    SIZES.flatMap((size) => ['en-GB', 'fr-FR'].map((locale) => [size.name, locale, size] as const)),
  )('opens clean on a %s in %s', async (_name, locale, size) => {
    expect(await walk(size, locale)).toEqual([]);
  });
});
