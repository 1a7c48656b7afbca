import { instantText, numberText, quantityText } from '../kit/formats';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, facts, heading, titleBlock } from '../kit/sheet-parts';
import { CAUTIONS } from './cautions.words';
import { stepSection } from './recall-report-steps';
import type { RecallReportView } from './recall-report-view';
import { RECALL_REPORT_WORDS } from './recall-report.words';
import { changeText, section } from './recall-tables';
import { RECALL_WORDS } from './recall.words';

const caseFacts = (sheet: Sheet, view: RecallReportView): void => {
  const { language, timeZone } = sheet.context;
  const words = RECALL_REPORT_WORDS[language];
  const list = RECALL_WORDS[language];
  const at = (instant: Date | null): string =>
    instant === null ? words.notYet : instantText(instant, timeZone, language);
  facts(sheet, [
    [list.reason, [{ text: view.reason, strong: true }]],
    [words.because, view.because.join('\n')],
    [list.opened, at(view.openedAt)],
    [words.frozen, at(view.frozenAt)],
    [words.closed, at(view.closedAt)],
    [words.lotsInScope, String(view.lots)],
  ]);
};

const resultFacts = (sheet: Sheet, view: RecallReportView): void => {
  const { language } = sheet.context;
  const words = RECALL_REPORT_WORDS[language];
  const grams = (text: string): string => quantityText(text, 'g', language);
  const percent =
    view.recoveredPercent === null
      ? words.nothingSent
      : `${numberText(view.recoveredPercent, language)} %`;
  const names = (some: readonly (string | null)[]): string =>
    some.length === 0 ? words.nobody : some.map((name) => name ?? words.theCounter).join(', ');
  heading(sheet, words.result);
  facts(
    sheet,
    [
      [words.distributed, grams(view.distributedG)],
      [words.recovered, [{ text: `${grams(view.recoveredG)} · ${percent}`, strong: true }]],
      [words.outstanding, grams(view.outstandingG)],
      [words.notHeardFrom, names(view.notHeardFrom)],
      [words.overRecovered, names(view.overRecovered)],
    ],
    60,
  );
};

const customerSection = (sheet: Sheet, view: RecallReportView): void => {
  const { language } = sheet.context;
  const words = RECALL_REPORT_WORDS[language];
  const list = RECALL_WORDS[language];
  const right = { align: 'right' as const };
  section(
    sheet,
    list.customers,
    view.customers.map((customer) => ({
      cells: [
        customer.name,
        numberText(customer.boxes, language),
        numberText(customer.pieces, language),
        quantityText(customer.distributedG, 'g', language),
        quantityText(customer.recoveredG, 'g', language),
        [{ text: customer.told ? list.yes : list.no, strong: !customer.told }],
      ],
    })),
    [
      { title: words.customer, share: 34 },
      { title: words.boxes, share: 12, ...right },
      { title: words.pieces, share: 14, ...right },
      { title: words.distributed, share: 18, ...right },
      { title: words.recovered, share: 16, ...right },
      { title: list.told, share: 10 },
    ],
  );
};

const openQuestions = (sheet: Sheet, view: RecallReportView): void => {
  const words = RECALL_REPORT_WORDS[sheet.context.language];
  const { lot, change } = RECALL_WORDS[sheet.context.language];
  const columns = (second: string) => [
    { title: lot, share: 25 },
    { title: second, share: 75 },
  ];
  const rows = (some: readonly { readonly lotCode: string; readonly words: string }[]) =>
    some.map((row) => ({ cells: [[{ text: row.lotCode, strong: true }], row.words] }));
  if (view.excluded.length === 0) sheet.text(words.excludedNone);
  else {
    const excluded = view.excluded.map((row) => ({ lotCode: row.lotCode, words: row.reason }));
    section(sheet, words.excluded, rows(excluded), columns(words.why));
  }
  heading(sheet, words.notHeld);
  if (view.mode === 'rehearsal') sheet.text(words.rehearsalHolds);
  sheet.text(view.notHeld.length === 0 ? words.notHeldNone : view.notHeld.join(', '));
  if (view.changes.length === 0) {
    heading(sheet, words.changes);
    sheet.text(words.changesNone);
  } else {
    const changes = view.changes.map((row) => ({
      lotCode: row.lotCode,
      words: changeText(row, sheet.context.language),
    }));
    section(sheet, words.changes, rows(changes), columns(change));
  }
};

/** The whole case on paper, at its close or while it runs. */
export const recallReport = (view: RecallReportView, context: PaperContext): Promise<Buffer> => {
  const { language } = context;
  const words = RECALL_REPORT_WORDS[language];
  const list = RECALL_WORDS[language];
  const sheet = new Sheet(context, `${words.title} ${view.code}`);
  const lead = view.mode === 'rehearsal' ? `${list.rehearsal} · ` : '';
  titleBlock(sheet, words.title, [{ text: lead, strong: true }, { text: view.code }], {
    kind: 'qrcode',
    text: view.code,
  });
  if (view.closedAt === null) caution(sheet, words.interim);
  caseFacts(sheet, view);
  caution(sheet, CAUTIONS[language].recallScope);
  if (view.conclusion !== null) {
    heading(sheet, words.conclusion);
    sheet.text(view.conclusion);
  }
  resultFacts(sheet, view);
  customerSection(sheet, view);
  openQuestions(sheet, view);
  stepSection(sheet, view);
  return sheet.finish();
};
