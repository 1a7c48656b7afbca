import { addItem, addSpecification, addSupplier } from '../support/workshop/fixtures';
import { openStory, pick, step, type Story } from './support/story';

jest.setTimeout(180_000);

let story: Story;

beforeAll(async () => {
  story = await openStory('maker', { locale: 'fr-FR' });
  const { service } = story;
  const { id: dairy } = await addSupplier(service, 'Laiterie inventée');
  const cream = await addItem(service, {
    ...{ name: 'Crème 35 %', kind: 'ingredient', perishable: true, warmestTempC: '6.5' },
  });
  await addSpecification(service, cream.id, dairy);
});
afterAll(() => story.end());

/** A line of goods in, typed as French hands type it. */
const fillLine = async (useBy: string, tempC: string): Promise<void> => {
  const { page } = story;
  await page.getByRole('link', { name: /^Réception \d/ }).click();
  await page.getByRole('link', { name: 'Réceptionner', exact: true }).click();
  await page
    .getByLabel('Fournisseur *', { exact: true })
    .selectOption({ label: 'Laiterie inventée' });
  await pick(page, /^Article/, 'Crème 35 %');
  await page.getByText('Ne doit pas arriver à plus de 6,5 °C.').waitFor();
  await page.getByLabel(/^Lot du fournisseur/).fill('CR-90');
  await page.getByText('à consommer jusqu’au', { exact: true }).click();
  await page.getByLabel(/^Date\b/).fill(useBy);
  await page.getByLabel(/^Quantité/).fill('2512,4');
  await page.getByLabel(/^Prix de toute la ligne/).fill('1 024,50');
  await page.getByLabel(/^Température/).fill(tempC);
  await page.getByRole('button', { name: 'Ajouter cette ligne' }).click();
};

describe('une personne qui lit le français', () => {
  step('finds the workshop in French, told so to screen readers', async () => {
    const { page } = story;
    await page.getByRole('heading', { level: 1, name: 'Aujourd’hui' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('fr');
  });

  step('takes goods in with a comma in the numbers', async () => {
    const { page } = story;
    await fillLine('2030-01-31', '4,5');
    await page.getByRole('button', { name: 'Enregistrer la livraison' }).click();
    await page.getByRole('heading', { level: 1, name: /^Livraison du/ }).waitFor();
  });

  step('reads weights, money and days as they are written in French', async () => {
    const { page } = story;
    const row = page.getByRole('row').filter({ hasText: 'CR-90' });
    const written = (await row.innerText()).replaceAll(/[\u00a0\u202f]/g, ' ');
    expect(written).toContain('2,512 kg');
    expect(written).toContain('1 024,50 €');
    expect(written).toContain('31 janv. 2030');
  });

  step('changes to English and back with one tap, and is remembered', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'English' }).click();
    await page.getByRole('heading', { level: 1, name: /^Delivery of/ }).waitFor();
    await page.reload();
    await page.getByRole('heading', { level: 1, name: /^Delivery of/ }).waitFor();
    await page.getByRole('button', { name: 'Français' }).click();
    await page.getByRole('heading', { level: 1, name: /^Livraison du/ }).waitFor();
  });

  step('reads why a lot is on hold in whichever language the screen has', async () => {
    const { page } = story;
    await fillLine('2030-01-31', '9');
    await page.getByRole('button', { name: 'Enregistrer la livraison' }).click();
    await page.getByText(/Arrivé à 9\s°C\s; la limite est de 6.5\s°C\./).waitFor();
    await page.getByRole('button', { name: 'English' }).click();
    await page.getByText(/Arrived at 9 °C; the limit is 6.5 °C\./).waitFor();
    await page.getByRole('button', { name: 'Français' }).click();
    await page.getByText(/Arrivé à 9\s°C/).waitFor();
  });

  step('reads in French why the service refuses a line, and how to go on', async () => {
    const { page } = story;
    await fillLine('2020-01-31', '4,5');
    await page.getByRole('button', { name: 'Enregistrer la livraison' }).click();
    const notice = page.getByRole('alert');
    await notice.getByText('Date limite de consommation dépassée', { exact: true }).waitFor();
    await notice.getByText(/Refusez la ligne et prévenez le fournisseur\./).waitFor();
  });
});
