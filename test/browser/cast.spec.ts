import { BenchHands } from '../support/workshop/bench';
import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let trays: readonly string[];
let piece: string;

const as = () => story.service.as;

/** What earlier jobs made: couverture in the tank, a filling, two mould trays. */
const makeBefore = async (): Promise<void> => {
  const hands = new BenchHands(story.service);
  const cream = await kitchen.receive(kitchen.cream, '1000', { useBy: '2099-01-01' });
  const couverture = await kitchen.receive(kitchen.couverture, '5000');
  await hands.make(
    kitchen.ganache,
    [
      { lotCode: cream, quantity: '480' },
      { lotCode: couverture, quantity: '600' },
    ],
    { outputs: [{ quantity: '1080' }] },
  );
  const made = await as().maker.post('/moulds', { designId: kitchen.designId, count: 2 });
  trays = (made.body as { items: { tag: string }[] }).items.map(({ tag }) => tag);
  const item = await as().maker.get(`/items/${kitchen.piece}`).expect(200);
  piece = (item.body as { name: string }).name;
};

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  await makeBefore();
});
afterAll(() => story.end());

const dialog = () => story.page.getByRole('dialog');

describe('a maker who casts', () => {
  step('fills a tank from a lot of couverture', async () => {
    const { page } = story;
    await page.goto('/moulding');
    await page.getByRole('link', { name: 'Tanks' }).click();
    await page.getByRole('button', { name: 'Add a tank' }).click();
    await dialog().getByLabel(/^Name/).fill('Wheel one');
    await dialog()
      .getByRole('combobox', { name: /^Chocolate that it holds/ })
      .click();
    await page.getByRole('option', { name: /^Dark couverture/ }).click();
    await dialog()
      .getByLabel(/^Capacity/)
      .fill('6000');
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /Top up/ }).click();
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('3000');
    await dialog()
      .getByRole('button', { name: /Top up/ })
      .click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByText('3 kg').first().waitFor();
  });

  step('starts by whole trays', async () => {
    const { page } = story;
    await page.goto('/moulding');
    await page.getByRole('link', { name: 'Start casting' }).click();
    await page.getByRole('combobox', { name: /^What is made/ }).click();
    await page.getByRole('option', { name: piece }).click();
    await page.getByText('by trays', { exact: true }).click();
    await page.getByRole('textbox', { name: 'Trays' }).fill('2');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: piece }).waitFor();
    await page.getByText('Planned: 48').waitFor();
    const place = page.getByRole('link', { name: /^Moulding/ }).and(page.locator('[aria-current]'));
    await place.waitFor();
  });

  step('takes the shell from the tank and the filling from its lot', async () => {
    const { page } = story;
    const buttons = page.getByRole('button', { name: /^Weigh in/ });
    await buttons.first().click();
    await dialog()
      .getByText(/in Wheel one/)
      .first()
      .waitFor();
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('288');
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /^Weigh in Tea ganache/ }).click();
    await dialog()
      .getByLabel(/^Quantity/)
      .fill('240');
    await dialog().getByRole('button', { name: 'Weigh in' }).click();
    await dialog().waitFor({ state: 'detached' });
  });

  step('scans the trays and taps the rejects in the picture', async () => {
    const { page } = story;
    await scan(page, trays[0] ?? '');
    await dialog()
      .getByRole('button', { name: /^Cavity 5\b/ })
      .click();
    await dialog()
      .getByRole('button', { name: /^Cavity 9\b/ })
      .click();
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Fill a tray' }).click();
    await dialog()
      .getByLabel('Tag of the tray')
      .fill(trays[1] ?? '');
    await dialog()
      .getByRole('button', { name: /^Cavity 1\b/ })
      .waitFor();
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
    await page
      .getByRole('region', { name: 'Trays' })
      .getByText(trays[1] ?? '')
      .waitFor();
  });

  step('finishes with the good pieces counted, the rejects kept as rework', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Finish', exact: true }).click();
    expect(
      await dialog()
        .getByLabel(/^What came out/)
        .inputValue(),
    ).toBe('46');
    expect(await dialog().getByLabel('Rejected pieces').inputValue()).toBe('2');
    await dialog().getByRole('button', { name: 'Finish' }).click();
    await dialog().waitFor({ state: 'detached' });
    const made = page.getByRole('region', { name: 'Made' });
    await made.getByText('46').first().waitFor();
  });

  step('finds the pieces again by scanning a tray', async () => {
    const { page } = story;
    await page.goto('/');
    await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
    await scan(page, trays[0] ?? '');
    await page.getByText(piece).first().waitFor();
  });
});
