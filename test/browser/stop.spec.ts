import type { IncomingMessage, ServerResponse } from 'node:http';
import { accessibilityFaults } from './support/accessibility';
import { hold } from './support/held';
import { openStory, step, type Story } from './support/story';
import { packPrintable } from '../support/workshop/printable-box';
import { StraightAt } from '../support/workshop/straight-at';

jest.setTimeout(240_000);

let story: Story;
let boxes: string;

beforeAll(async () => {
  story = await openStory('maker');
  boxes = await packPrintable(story.service);
});
afterAll(() => story.end());

const press = (name: string) => story.page.getByRole('button', { name, exact: true }).click();
/** What shows the work: another may go on beside it. */
const shown = (what: string) => story.page.getByRole('group', { name: what, exact: true });
const told = (what: string) => story.page.getByRole('status').filter({ hasText: what });
const kept = async (path: string): Promise<readonly unknown[]> => {
  const answer = (await story.service.as.auditor.get(path).expect(200)).body as
    readonly unknown[] | { readonly items: readonly unknown[] };
  return 'items' in answer ? answer.items : answer;
};

/** The pressed button may have made room: the keyboard is not lost with it. */
const expectKeyboardHere = async (what: string): Promise<void> => {
  await told(what).waitFor();
  const lost = await story.page.evaluate(() => document.activeElement === document.body);
  expect(lost).toBe(false);
};

/** Looks on until it says for how long it has gone on, and stops it. */
const stopAfterAWhile = async (what: string): Promise<void> => {
  const { page } = story;
  await told(what).waitFor();
  await page.getByRole('progressbar', { name: what }).waitFor();
  await shown(what)
    .getByText(/^[1-9]\d* s$/)
    .waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await press(`Cancel: ${what}`);
  await told(what).waitFor({ state: 'detached' });
  expect(await page.getByRole('alert').count()).toBe(0);
};

/**
 * A look is slowed down by a lock on what it reads: holding it back in the browser doesn't catch what
 * the worker between page and service sends.
 */
const whileLocked = async (table: string, work: () => Promise<void>): Promise<void> => {
  const database = await StraightAt.open(story.service.databaseUrl);
  await database.rows('BEGIN');
  await database.rows(`LOCK TABLE ${table} IN ACCESS EXCLUSIVE MODE`);
  try {
    await work();
  } finally {
    await database.rows('ROLLBACK');
    await database.close();
  }
};

/** Waits until a client leaves a request to such a path without its answer. */
const hangsUp = (path: RegExp): Promise<void> =>
  new Promise((resolve) => {
    const server = story.service.app.getHttpServer();
    server.on('request', (request: IncomingMessage, response: ServerResponse) => {
      if (!path.test(request.url ?? '')) return;
      response.once('close', () => {
        if (!response.writableFinished) resolve();
      });
    });
  });

describe('a plan that takes long', () => {
  const WHAT = 'The plan is being made…';

  step('says so and for how long, and is not made when it is stopped', async () => {
    const { page } = story;
    await page.goto(`${story.service.origin}/out/plan`);
    const held = await hold(page, 'POST', /^\/api\/plan$/);
    await press('Make a new plan');
    await held.request;
    await expectKeyboardHere(WHAT);
    await stopAfterAWhile(WHAT);
    await held.release();
    expect(await kept('/plans')).toEqual([]);
  });

  step('is made when it is asked for again', async () => {
    await press('Make a new plan');
    await story.page.getByText(/^Made /).waitFor();
    expect(await kept('/plans')).toHaveLength(1);
  });
});

describe('a long run of labels', () => {
  const WHAT = 'The labels are drawn and put on record…';
  const runs = () => kept(`/lots/${boxes}/label-runs`);
  const copies = (count: string) => story.page.getByLabel(/^Copies/).fill(count);
  const PRINT = 'Print and put on record';

  step('is not on record when it is stopped, however late its request arrives', async () => {
    const { page, service } = story;
    await page.goto(`${service.origin}/packing/labels/${boxes}`);
    const held = await hold(page, 'POST', /\/label-runs$/);
    await press(PRINT);
    const request = await held.request;
    await stopAfterAWhile(WHAT);
    await held.release();
    const key = request.headers()['idempotency-key'] ?? '';
    const wishes = JSON.parse(request.postData() ?? '') as object;
    await service.as.maker.post(`/lots/${boxes}/label-runs`, wishes, key).expect(409);
    expect(await runs()).toEqual([]);
  });

  step('says how many of them are drawn, and ends in the middle', async () => {
    await copies('2000');
    await press(PRINT);
    await shown(WHAT)
      .getByText(/^[\d,]+ of 2,000$/)
      .waitFor();
    await press(`Cancel: ${WHAT}`);
    await told(WHAT).waitFor({ state: 'detached' });
    expect(await runs()).toEqual([]);
  });

  step('is on record when the stop came too late, and the screen says so', async () => {
    const { page } = story;
    await copies('3');
    const held = await hold(page, 'POST', /\/label-runs$/, (route) => route.fetch());
    await press(PRINT);
    await held.request;
    await press(`Cancel: ${WHAT}`);
    await held.release();
    await page.getByRole('region', { name: 'Printed so far' }).getByText('3 × box label').waitFor();
    expect(await runs()).toHaveLength(1);
  });

  step('can be printed again at once', async () => {
    const { page } = story;
    await copies('4');
    await press(PRINT);
    await page.getByRole('region', { name: 'Printed so far' }).getByText('4 × box label').waitFor();
    expect(await runs()).toHaveLength(2);
  });
});

describe('the scope of a recall', () => {
  const WHAT = 'Everything that it reached is being found…';

  step('opens no case when finding it is stopped', async () => {
    const { page, service } = story;
    await page.goto(`${service.origin}/trace/recalls/new?lot=${boxes}`);
    await page.getByLabel(/^What is wrong/).fill('A pin was found in the shop');
    const held = await hold(page, 'POST', /^\/api\/recalls$/);
    await press('Find everything');
    await held.request;
    await expectKeyboardHere(WHAT);
    await stopAfterAWhile(WHAT);
    await held.release();
    expect(await kept('/recalls')).toEqual([]);
  });

  step('is found when it is asked for again, with what was typed', async () => {
    const { page } = story;
    expect(await page.getByLabel(/^What is wrong/).inputValue()).toBe(
      'A pin was found in the shop',
    );
    await press('Find everything');
    await page.getByRole('heading', { level: 1, name: /^Case / }).waitFor();
    expect(await kept('/recalls')).toHaveLength(1);
  });

  step('shows that it is on its way when it is opened, and can be left for later', async () => {
    const { page } = story;
    const hungUp = hangsUp(/^\/api\/recalls\/[^/]+$/);
    await whileLocked('recall_case', async () => {
      await page.reload();
      await stopAfterAWhile('Loading…');
      await told('Stopped before it was there.').waitFor();
      await hungUp;
    });
    await press('Try again');
    await page.getByRole('heading', { level: 1, name: /^Case / }).waitFor();
  });
});

describe('a paper that grows with the record', () => {
  step('is made where that shows and can be stopped, and opens in a tab of its own', async () => {
    const { page, device } = story;
    const link = page.getByRole('link', { name: 'Trace report' });
    await page.goto(`/trace/lots/${boxes}`);
    await page.getByRole('heading', { name: /^What is behind it/ }).waitFor();
    const hungUp = hangsUp(/\/trace\.pdf/);
    await whileLocked('batch_loss', async () => {
      await link.click();
      await expectKeyboardHere('Trace report');
      await stopAfterAWhile('Trace report');
      await hungUp;
    });
    const tab = device.context.waitForEvent('page');
    await link.click();
    expect((await tab).url()).toMatch(/^blob:/);
    await (await tab).close();
    await link.waitFor();
  });
});
