import { createHash } from 'node:crypto';
import { packFour } from '../support/workshop/printable-box';
import { openStory, step, type Story } from './support/story';

jest.setTimeout(240_000);

let story: Story;
let boxes: string;
/** What the page asked to see last. */
let wishes: object;

beforeAll(async () => {
  story = await openStory('maker');
  boxes = (await packFour(story.service)).code;
});
afterAll(() => story.end());

const dialog = () => story.page.getByRole('dialog');
const seenLabel = () => story.page.getByRole('region', { name: 'The label, as it prints' });
const runs = async (): Promise<readonly { readonly pdfSha256: string }[]> =>
  (await story.service.as.auditor.get(`/lots/${boxes}/label-runs`).expect(200)).body as readonly {
    readonly pdfSha256: string;
  }[];

describe('the label of a box', () => {
  step('shows nothing to print while something keeps it back', async () => {
    const { page } = story;
    await page.goto(`${story.service.origin}/packing/labels/${boxes}`);
    await seenLabel().getByText('There is nothing to see while something keeps the label back.').waitFor(); // prettier-ignore
    await page.getByText('The product has no name in en.').waitFor();
    expect(await seenLabel().getByRole('link').count()).toBe(0);
  });

  step('is set up on screen: name, kind, and why no nutrition table is owed', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Set up this label' }).click();
    await dialog()
      .getByLabel(/^Sales name/)
      .fill('Hazelnut ganache chocolates');
    await dialog()
      .getByLabel(/^Legal kind/)
      .selectOption('praline');
    await dialog()
      .getByLabel(/no nutrition table is owed/)
      .check();
    await dialog().getByRole('button', { name: 'Save' }).click();
    await dialog().waitFor({ state: 'detached' });
  });

  step('is then seen before it is printed, and nothing is on record yet', async () => {
    await seenLabel()
      .getByText(/the very file that printing puts on record/)
      .waitFor();
    await seenLabel().getByRole('link', { name: 'Open the PDF' }).waitFor();
    expect(await runs()).toEqual([]);
  });

  step('changes as it is asked to: another market speaks by other rules', async () => {
    const { page } = story;
    // The label is drawn when nobody has changed a wish for a moment: that has to have come about.
    const american = page.waitForResponse(
      (answer) =>
        answer.url().endsWith('/label-previews') &&
        answer.request().postData()?.includes('"US"') === true,
    );
    await page.getByLabel(/^Market/).selectOption('US');
    await page
      .getByRole('region', { name: 'Ingredients' })
      .getByText(/soy lecithin/)
      .waitFor();
    await american;
    const drawn = page.waitForResponse(
      (answer) =>
        answer.url().endsWith('/label-previews') &&
        answer.ok() &&
        answer.request().postData()?.includes('"US"') === false,
    );
    await page.getByLabel(/^Market/).selectOption('');
    wishes = JSON.parse((await drawn).request().postData() ?? '') as object;
  });

  step('goes on record byte for byte as it was seen', async () => {
    const { page } = story;
    await page.getByRole('button', { name: 'Print and put on record' }).click();
    await page
      .getByRole('region', { name: 'Printed so far' })
      .getByText(/1 × box label/)
      .waitFor();
    const again = await story.service.as.maker
      .post(`/lots/${boxes}/label-previews`, wishes)
      .buffer(true)
      .expect(200);
    const seen = createHash('sha256')
      .update(again.body as Buffer)
      .digest('hex');
    expect((await runs()).map(({ pdfSha256 }) => pdfSha256)).toEqual([seen]);
  });
});
