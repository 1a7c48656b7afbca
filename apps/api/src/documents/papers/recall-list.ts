import { dayText, instantText, quantityText } from '../kit/formats';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, facts, heading, titleBlock } from '../kit/sheet-parts';
import { CAUTIONS } from './cautions.words';
import { changeText, customerRows, lotCell, saleCells, section, totalOf } from './recall-tables';
import type { RecallView } from './recall-view';
import { RECALL_WORDS } from './recall.words';

const figures = (sheet: Sheet, view: RecallView): void => {
  const { context } = sheet;
  const words = RECALL_WORDS[context.language];
  const sold = view.customers.flatMap(({ sales }) => sales);
  const total = (rows: Parameters<typeof totalOf>[0]): string => totalOf(rows, context.language);
  heading(sheet, words.totals);
  facts(
    sheet,
    [
      [words.customers, `${total(sold)} (${view.customers.length})`],
      [words.counter, total(view.counter)],
      [words.onHand, total(view.onHand)],
      [words.ended, total(view.ended)],
    ],
    60,
  );
};

const saleColumns = ({ language }: PaperContext) => {
  const words = RECALL_WORDS[language];
  return [
    { title: `${words.what}, ${words.lot}`, share: 32 },
    { title: words.quantity, share: 15, align: 'right' as const },
    { title: words.sent, share: 22 },
  ];
};

const sentSections = (sheet: Sheet, view: RecallView): void => {
  const { context } = sheet;
  const words = RECALL_WORDS[context.language];
  const sale = saleColumns(context);
  section(
    sheet,
    words.customers,
    view.customers.flatMap((customer) => customerRows(customer, context)),
    [{ title: words.contact, share: 34 }, ...sale, { title: words.told, share: 8 }],
  );
  section(
    sheet,
    words.counter,
    view.counter.map((row) => ({ cells: saleCells(row, context) })),
    sale,
  );
  if (view.counter.length > 0) sheet.text(words.counterNote);
};

const hereSections = (sheet: Sheet, view: RecallView): void => {
  const { language } = sheet.context;
  const words = RECALL_WORDS[language];
  const sale = saleColumns(sheet.context);
  section(
    sheet,
    words.onHand,
    view.onHand.map((stock) => ({
      cells: [
        lotCell(stock, language),
        quantityText(stock.quantity, stock.unit, language),
        stock.placeName ?? '',
        [{ text: stock.held ? words.yes : words.no, strong: !stock.held }],
      ],
    })),
    [...sale.slice(0, 2), { title: words.place, share: 24 }, { title: words.held, share: 12 }],
  );
  section(
    sheet,
    words.ended,
    view.ended.map((end) => ({
      cells: [words.endOf(end.what), end.lotCode, quantityText(end.quantity, end.unit, language)],
    })),
    [
      { title: words.what, share: 50 },
      { title: words.lot, share: 25 },
      { title: words.quantity, share: 20, align: 'right' },
    ],
  );
  section(
    sheet,
    words.lots,
    view.lots.map((lot) => ({
      cells: [
        [{ text: lot.code, strong: true }],
        lot.itemName,
        quantityText(lot.quantity, lot.unit, language),
        lot.date === null ? '' : `${words[lot.dateKind]} ${dayText(lot.date, language)}`,
      ],
    })),
    [
      { title: words.lot, share: 20 },
      { title: words.what, share: 40 },
      { title: words.quantity, share: 16, align: 'right' },
      { title: words.date, share: 26 },
    ],
  );
};

/** What is not in the scope as a person reviewed it: it stands before all else. */
const changeSection = (sheet: Sheet, view: RecallView): void => {
  if (view.changes.length === 0) return;
  const words = RECALL_WORDS[sheet.context.language];
  section(
    sheet,
    words.changes,
    view.changes.map((change) => ({
      cells: [[{ text: change.lotCode, strong: true }], changeText(change, sheet.context.language)],
    })),
    [
      { title: words.lot, share: 20 },
      { title: words.change, share: 80 },
    ],
  );
};

/** Who has what of the recalled lots, what is still here, and whether it is on hold. */
export const recallList = (view: RecallView, context: PaperContext): Promise<Buffer> => {
  const { language, timeZone } = context;
  const words = RECALL_WORDS[language];
  const sheet = new Sheet(context, `${words.listTitle} ${view.code}`);
  const lead = view.mode === 'rehearsal' ? `${words.rehearsal} · ` : '';
  titleBlock(sheet, words.listTitle, [{ text: lead, strong: true }, { text: view.code }], {
    kind: 'qrcode',
    text: view.code,
  });
  if (view.mode === 'rehearsal') caution(sheet, words.rehearsalNote);
  facts(sheet, [
    [words.reason, [{ text: view.reason, strong: true }]],
    [words.opened, instantText(view.openedAt, timeZone, language)],
    [words.asked, instantText(view.askedAt, timeZone, language)],
  ]);
  caution(sheet, CAUTIONS[language].recallScope);
  changeSection(sheet, view);
  figures(sheet, view);
  sentSections(sheet, view);
  hereSections(sheet, view);
  return sheet.finish();
};
