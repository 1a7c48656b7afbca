import { type Kitchen, openKitchen } from '../support/workshop/kitchen';
import { openStory, scan, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;
let kitchen: Kitchen;
let cream: string;
let couverture: string;

beforeAll(async () => {
  story = await openStory('maker');
  kitchen = await openKitchen(story.service);
  cream = await kitchen.receive(kitchen.cream, '2000', { price: '10.00' });
  couverture = await kitchen.receive(kitchen.couverture, '5000', { price: '50.00' });
});
afterAll(() => story.end());

const onHand = async (code: string): Promise<string> => {
  const answer = await story.service.as.maker.get(`/lots/${code}`).expect(200);
  return (answer.body as { onHandQuantity: string }).onHandQuantity;
};

describe('a maker who counts the store', () => {
  step('writes what is there beside each lot, and keeps it over a reload', async () => {
    const { page } = story;
    await page.goto('/store/count');
    await page.getByLabel(`${cream}, counted (g)`).fill('1900');
    await scan(page, couverture);
    await page.getByLabel(`${couverture}, counted (g)`).fill('5000');
    await page.reload();
    await page.getByRole('button', { name: 'Book 2 counts' }).waitFor();
    expect(await onHand(cream)).toBe('2000.000');
  });

  step('books it in one step and is told the differences', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Book 2 counts' }).click();
    const row = page.getByRole('row').filter({ hasText: cream });
    await row.getByText('−100').waitFor();
    expect(await page.getByRole('row').filter({ hasText: couverture }).count()).toBe(0);
    expect(await onHand(cream)).toBe('1900.000');
    expect(await onHand(couverture)).toBe('5000.000');
    expect(await page.getByRole('button', { name: 'Book 0 counts' }).isDisabled()).toBe(true);
  });
});
