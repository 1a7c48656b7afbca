import { dayText, instantText, labelled, numberText, quantityText } from '../kit/formats';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, facts, heading, titleBlock } from '../kit/sheet-parts';
import { table, type Row } from '../kit/table';
import { balanceWords } from './balance.words';
import { CAUTIONS } from './cautions.words';
import type {
  TraceBalance,
  TraceBalanceLine,
  TraceLot,
  TraceReportView,
  TraceSale,
} from './trace-view';
import { TRACE_WORDS } from './trace.words';

const lotRow = (lot: TraceLot, { language }: PaperContext): Row => {
  const held = lot.held ? ` (${TRACE_WORDS[language].held})` : '';
  return {
    cells: [
      [{ text: lot.code, strong: true }, { text: held }],
      lot.itemName,
      `${lot.supplierLot ?? lot.batchCode ?? ''}\n${dayText(lot.madeOn, language)}`,
      quantityText(lot.made, lot.unit, language),
      quantityText(lot.onHand, lot.unit, language),
      lot.sharedMassG === null ? '?' : numberText(lot.sharedMassG, language),
    ],
  };
};

const lotTable = (sheet: Sheet, title: string, lots: readonly TraceLot[]): void => {
  const words = TRACE_WORDS[sheet.context.language];
  heading(sheet, `${title} (${lots.length})`);
  if (lots.length === 0) {
    sheet.text(words.none);
    return;
  }
  table(sheet, {
    columns: [
      { title: words.lot, share: 19 },
      { title: words.what, share: 27 },
      { title: words.origin, share: 25 },
      { title: words.made, share: 15, align: 'right' },
      { title: words.onHand, share: 14, align: 'right' },
      { title: words.shared, share: 14, align: 'right' },
    ],
    rows: lots.map((lot) => lotRow(lot, sheet.context)),
    sizePt: 8,
  });
};

const sentTable = (sheet: Sheet, sent: readonly TraceSale[]): void => {
  const { language } = sheet.context;
  const words = TRACE_WORDS[language];
  heading(sheet, `${words.sent} (${sent.length})`);
  if (sent.length === 0) {
    sheet.text(words.none);
    return;
  }
  table(sheet, {
    columns: [
      { title: words.whom, share: 28 },
      { title: words.when, share: 24 },
      { title: words.what, share: 34 },
      { title: words.quantity, share: 15, align: 'right' },
    ],
    rows: sent.map((sale) => ({
      cells: [
        sale.customerName ?? words.counter,
        `${dayText(sale.sentOn, language)}\n${sale.dispatchCode}`,
        [{ text: `${sale.itemName}\n` }, { text: sale.lotCode, strong: true }],
        quantityText(sale.quantity, sale.unit, language),
      ],
    })),
    sizePt: 8,
  });
};

const balanceTable = (sheet: Sheet, balance: TraceBalance): void => {
  const { language } = sheet.context;
  const words = TRACE_WORDS[language];
  const line = ({ kind, note, quantity, percent }: TraceBalanceLine): Row => ({
    cells: [
      balanceWords(kind, note, language),
      quantityText(quantity, balance.unit, language),
      numberText(percent, language),
    ],
  });
  const total = (what: string, quantity: string, percent: string): Row => ({
    cells: [what, quantityText(quantity, balance.unit, language), percent],
    strong: true,
  });
  heading(sheet, words.balance);
  table(sheet, {
    columns: [
      { title: words.what, share: 60 },
      { title: words.quantity, share: 22, align: 'right' },
      { title: words.percent, share: 14, align: 'right' },
    ],
    rows: [
      ...balance.sources.map(line),
      total(words.source, balance.sourceQuantity, ''),
      ...balance.ends.map(line),
      total(balanceWords('unexplained', null, language), balance.unexplainedQuantity, ''),
    ],
  });
  facts(sheet, [[words.accounted, `${numberText(balance.accountedPercent, language)} %`]]);
};

/** Everything behind and ahead of a lot, a mould, a tank or a delivery, with grams. */
export const traceReport = (view: TraceReportView, context: PaperContext): Promise<Buffer> => {
  const { language, timeZone } = context;
  const words = TRACE_WORDS[language];
  const sheet = new Sheet(context, labelled(words.title, view.subject, language));
  const symbol =
    view.subjectCode === null ? undefined : { kind: 'qrcode' as const, text: view.subjectCode };
  titleBlock(sheet, words.title, [{ text: view.subject, strong: true }], symbol);
  facts(sheet, [[words.asked, instantText(view.askedAt, timeZone, language)]]);
  caution(sheet, CAUTIONS[language].recallScope);
  if (view.throughTank) caution(sheet, CAUTIONS[language].tankScope);
  lotTable(sheet, words.roots, view.roots);
  if (view.balance !== null) balanceTable(sheet, view.balance);
  lotTable(sheet, words.behind, view.behind);
  lotTable(sheet, words.ahead, view.ahead);
  sentTable(sheet, view.sent);
  return sheet.finish();
};
