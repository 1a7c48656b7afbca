import { dayText, quantityText } from '../kit/formats';
import { INK } from '../kit/drawing';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, facts, heading, linesToWrite, titleBlock } from '../kit/sheet-parts';
import { table } from '../kit/table';
import { CAUTIONS } from './cautions.words';
import type { RecallCustomer, RecallView } from './recall-view';
import { RECALL_WORDS } from './recall.words';

/** What a notice says besides the case: for the door, the web page and the newspaper. */
export interface RecallNoticeView {
  readonly code: string;
  readonly mode: 'real' | 'rehearsal';
  /** In words for buyers. */
  readonly reason: string;
  readonly advice: string;
  readonly products: readonly {
    readonly itemName: string;
    /** As printed on the pack, with the L. */
    readonly lotMark: string;
    readonly date: string | null;
    readonly dateKind: 'best_before' | 'use_by';
  }[];
}

const contactText = ({ workshop }: PaperContext): string =>
  [workshop.name, ...workshop.addressLines, workshop.phone, workshop.email]
    .filter((line) => line !== null)
    .join('\n');

/** A notice for buyers, set large enough to hang at the door. */
export const recallNotice = (view: RecallNoticeView, context: PaperContext): Promise<Buffer> => {
  const { language } = context;
  const words = RECALL_WORDS[language];
  const sheet = new Sheet(context, `${words.noticeTitle} ${view.code}`);
  const large = { sizePt: 15, colour: INK };
  titleBlock(sheet, words.noticeTitle, view.code);
  if (view.mode === 'rehearsal') caution(sheet, words.rehearsalNote);
  heading(sheet, words.affected, large);
  table(sheet, {
    columns: [
      { title: words.what, share: 45 },
      { title: words.lot, share: 25 },
      { title: words.date, share: 30 },
    ],
    rows: view.products.map((product) => ({
      cells: [
        [{ text: product.itemName, strong: true }],
        [{ text: product.lotMark, strong: true }],
        product.date === null
          ? ''
          : `${words[product.dateKind]} ${dayText(product.date, language)}`,
      ],
    })),
    sizePt: 13,
  });
  heading(sheet, words.whyNotice, large);
  sheet.text(view.reason, large);
  heading(sheet, words.whatToDo, large);
  sheet.text([{ text: view.advice, strong: true }], large);
  heading(sheet, words.contactUs, large);
  sheet.text(contactText(context), large);
  sheet.space(4);
  caution(sheet, CAUTIONS[language].recallNotice);
  return sheet.finish();
};

const letter = (
  sheet: Sheet,
  view: RecallView,
  customer: RecallCustomer,
  context: PaperContext,
): void => {
  const { language } = context;
  const words = RECALL_WORDS[language];
  titleBlock(sheet, words.noticeTitle, view.code);
  if (view.mode === 'rehearsal') caution(sheet, words.rehearsalNote);
  sheet.text([
    { text: customer.name, strong: true },
    { text: ['', ...customer.addressLines].join('\n') },
  ]);
  sheet.space(8);
  sheet.text([{ text: words.letterSubject(view.code), strong: true }], { sizePt: 12, colour: INK });
  sheet.space(3);
  sheet.text(words.letterOpening, { sizePt: 10 });
  sheet.text([{ text: view.reason, strong: true }], { sizePt: 10 });
  sheet.space(3);
  sheet.text(words.letterLots, { sizePt: 10 });
  sheet.space(2);
  table(sheet, {
    columns: [
      { title: words.what, share: 40 },
      { title: words.lot, share: 22 },
      { title: words.quantity, share: 16, align: 'right' },
      { title: words.sent, share: 26 },
    ],
    rows: customer.sales.map((sale) => ({
      cells: [
        sale.itemName,
        [{ text: sale.lotCode, strong: true }],
        quantityText(sale.quantity, sale.unit, language),
        `${dayText(sale.sentOn, language)} · ${sale.dispatchCode}`,
      ],
    })),
  });
  sheet.text([{ text: words.letterAsk, strong: true }], { sizePt: 10 });
  sheet.space(4);
  caution(sheet, CAUTIONS[language].recallLetter);
  facts(sheet, [[words.contactUs, contactText(context)]]);
  heading(sheet, words.letterReply);
  linesToWrite(sheet, [words.stillThere, words.soldOn, words.destroyed, words.signature]);
};

/** One letter for each customer, each on pages of its own. */
export const recallLetters = (view: RecallView, context: PaperContext): Promise<Buffer> => {
  const words = RECALL_WORDS[context.language];
  const sheet = new Sheet(context, `${words.noticeTitle} ${view.code}`);
  for (const [index, customer] of view.customers.entries()) {
    if (index > 0) sheet.newPage();
    letter(sheet, view, customer, context);
  }
  if (view.customers.length === 0) sheet.text(words.none);
  return sheet.finish();
};
