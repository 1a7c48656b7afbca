import type { RunningService } from '../support/service/test-service';
import { rowsOf } from './support/demo-facts';
import { openDemoStory, scan, step, type Story } from './support/story';

jest.setTimeout(300_000);

let story: Story<RunningService>;
let box: string;

beforeAll(async () => {
  story = await openDemoStory('seller');
}, 600_000);
afterAll(() => story.end());

const dialog = () => story.page.getByRole('dialog');
const register = (name: string) => story.page.getByRole('table', { name, exact: true });

const openComplaints = async (): Promise<void> => {
  const { page } = story;
  await page.getByRole('link', { name: 'Trace', exact: true }).click();
  await page.getByRole('link', { name: 'Complaints' }).click();
  await register('Complaints').waitFor();
};

const save = async (what: string): Promise<void> => {
  await dialog().getByLabel(/^Kind/).selectOption({ label: 'foreign body' });
  await dialog()
    .getByLabel(/^What happened/)
    .fill(what);
  await dialog().getByRole('button', { name: 'Save' }).click();
  await dialog().waitFor({ state: 'detached' });
  await register('Complaints').getByText(what).waitFor();
};

describe('a seller with a customer on the phone', () => {
  step('scans the box that was brought back and writes the complaint down', async () => {
    const { page } = story;
    await openComplaints();
    const [, , , , , code = ''] = (await rowsOf(register('Complaints')))[0] ?? [];
    box = code;
    await scan(page, box);
    await page.getByRole('link', { name: 'Someone complained' }).click();
    await dialog()
      .getByRole('radio', { name: /exactly/ })
      .waitFor();
    await save('Tooth met something hard');
  });

  step('finds the box by the code as a customer misreads it', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Write a complaint down' }).click();
    await dialog()
      .getByLabel(/^Code as the customer reads it/)
      .fill(box.replaceAll('0', 'O').toLowerCase());
    await dialog()
      .getByRole('radio', { name: new RegExp(box) })
      .check();
    await save('Crunch like glass');
    const row = register('Complaints').getByRole('row').filter({ hasText: 'Crunch like glass' });
    await row.getByText(box, { exact: true }).waitFor();
  });

  step('lets the complaints point at what they share: one tray', async () => {
    const { page } = story;
    const compare = page.getByRole('button', { name: 'What do the ticked ones share?' });
    expect(await compare.isDisabled()).toBe(true);
    for (const tick of await register('Complaints').getByRole('checkbox').all()) await tick.check();
    await compare.click();
    await page.getByText(/^\W*Few complaints prove nothing/).waitFor();
    const shared = page.getByRole('region', { name: 'Shared by all of them' });
    await shared
      .getByRole('link', { name: /^mould / })
      .first()
      .waitFor();
    const [first = []] = await rowsOf(register('Ranked suspects'));
    expect(first[0]).toMatch(/mould/);
    expect(first[1]).toBe('5 / 5');
  });

  step('opens the tray, which was found chipped, and a recall from it', async () => {
    const { page } = story;
    const shared = page.getByRole('region', { name: 'Shared by all of them' });
    const tray = shared.getByRole('link', { name: /^mould / }).first();
    const tag = (await tray.innerText()).split(' ').at(-1) ?? '';
    await tray.click();
    await page.getByRole('heading', { level: 1, name: `Trace of ${tag}` }).waitFor();
    await register('Where it went').getByText(box).waitFor();
    await page.getByRole('link', { name: 'Open a recall from this' }).click();
    expect(await page.getByLabel(/^Code/).inputValue()).toBe(tag);
    await page.getByText('Real', { exact: true }).click();
    await page.getByLabel(/^What is wrong/).fill('Splinters of a chipped mould');
    await page.getByRole('button', { name: 'Find everything' }).click();
    await page.getByRole('heading', { level: 1, name: /^Case / }).waitFor();
    await register('Lots in scope').getByText(box).waitFor();
  });

  step('writes down what came of a complaint and closes it', async () => {
    const { page } = story;
    await openComplaints();
    const row = register('Complaints').getByRole('row').filter({ hasText: 'Crunch like glass' });
    await row.getByRole('link').click();
    await page
      .getByRole('textbox', { name: 'What came of it' })
      .fill('Money back; the tray is out of use');
    await page.getByRole('button', { name: 'Close it' }).click();
    await page.getByText(/^\W*closed$/).waitFor();
    await page.reload();
    expect(await page.getByRole('textbox', { name: 'What came of it' }).inputValue()).toMatch(
      /^Money back/,
    );
  });
});
