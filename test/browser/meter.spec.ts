import { accessibilityFaults } from './support/accessibility';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;

const dialog = () => story.page.getByRole('dialog');

beforeAll(async () => {
  story = await openStory('maker');
});
afterAll(() => story.end());

const calibrate = async (instrument: string, salt: string, other: string): Promise<void> => {
  await story.page.getByRole('button', { name: 'Calibrate a meter' }).click();
  await dialog()
    .getByLabel(/^Meter, as/)
    .fill(instrument);
  const readings = dialog().getByRole('textbox', { name: /^What the meter read/ });
  await readings.first().fill(salt);
  await readings.last().fill(other);
  await dialog().getByRole('button', { name: 'Save' }).click();
};

describe('a maker with a water-activity meter', () => {
  step('finds its page beside the recipes; nothing was measured yet', async () => {
    const { page } = story;
    await page.goto('/recipes');
    await page.getByRole('link', { name: /^Water activity/ }).click();
    await page.getByText('No meter was calibrated yet.').waitFor();
    await page.getByText(/^No lot was measured/).waitFor();
  });

  step('holds a meter against two salts and is told the verdict', async () => {
    const { page } = story;
    await calibrate('bench meter', '0.754', '0.844');
    await dialog().waitFor({ state: 'detached' });
    const good = page.getByRole('row').filter({ hasText: 'bench meter' });
    await good.getByText(/✓ passed/).waitFor();
    await calibrate('old meter', '0.62', '0.7');
    await dialog().waitFor({ state: 'detached' });
    const bad = page.getByRole('row').filter({ hasText: 'old meter' });
    await bad.getByText(/not passed/).waitFor();
    await bad.getByText(/NaCl: read 0\.62, expected 0\.75/).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
