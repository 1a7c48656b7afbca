import { dayText, instantText, labelled, numberText, quantityText } from '../kit/formats';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, facts, heading, linesToWrite, titleBlock } from '../kit/sheet-parts';
import { barSymbol } from '../kit/symbols';
import { table, type Row } from '../kit/table';
import type { Words } from '../kit/words';
import type { BatchSheetCheck, BatchSheetView } from './batch-sheet-view';
import { BATCH_SHEET_WORDS } from './batch-sheet.words';
import { CAUTIONS } from './cautions.words';

const weighingRows = (view: BatchSheetView, { language }: PaperContext): Row[] =>
  view.lines.map((line) => {
    const role = BATCH_SHEET_WORDS[language].roles[line.role] ?? line.role;
    const date = line.lotDate === null ? '' : `\n${dayText(line.lotDate, language)}`;
    const lot: Words = [{ text: line.lotCode ?? '', strong: true }, { text: date }];
    return {
      cells: [
        { form: 'tick' },
        [{ text: line.itemName, strong: true }, { text: `\n${role}` }],
        line.lotCode === null ? { form: 'write' } : lot,
        line.lotCode === null ? '' : { symbol: barSymbol('qrcode', line.lotCode) },
        [{ text: quantityText(line.quantity, line.unit, language), strong: true }],
        { form: 'write' },
      ],
    };
  });

const limitsText = ({ low, high, unit }: BatchSheetCheck, context: PaperContext): string => {
  const number = (text: string): string => numberText(text, context.language);
  if (low !== null && high !== null) return `${number(low)} – ${number(high)} ${unit}`;
  if (low !== null) return `≥ ${number(low)} ${unit}`;
  return high === null ? unit : `≤ ${number(high)} ${unit}`;
};

const stepRows = (view: BatchSheetView, context: PaperContext): Row[] =>
  view.steps.flatMap((step, index): Row[] => {
    const what: Words = [
      { text: `${index + 1}. ${step.title}`, strong: true },
      { text: step.text === '' ? '' : `\n${step.text}` },
    ];
    const [first, ...others] = step.checks;
    const check = (entry: BatchSheetCheck): Row['cells'] => [
      labelled(entry.measure, limitsText(entry, context), context.language),
      { form: 'write' },
    ];
    return [
      { cells: [{ form: 'tick' }, what, ...(first === undefined ? [] : check(first))] },
      ...others.map((entry) => ({ cells: ['', '', ...check(entry)] })),
    ];
  });

/** A batch on paper: to weigh and tick by hand, with codes to scan back afterwards. */
export const batchSheet = (view: BatchSheetView, context: PaperContext): Promise<Buffer> => {
  const { language, timeZone } = context;
  const words = BATCH_SHEET_WORDS[language];
  const sheet = new Sheet(context, `${words.title} ${view.code}`);
  const version = view.recipeVersion === null ? '' : `, ${words.version(view.recipeVersion)}`;
  titleBlock(sheet, words.title, [{ text: view.itemName, strong: true }, { text: version }], {
    kind: 'qrcode',
    text: view.code,
  });
  facts(sheet, [
    ['Code', [{ text: view.code, strong: true }]],
    ...(view.part === null ? [] : [[words.part, words.partOf(view.part)] as const]),
    [words.opened, instantText(view.openedAt, timeZone, language)],
    [words.operator, view.operatorName],
    ...(view.placeName === null ? [] : [[words.place, view.placeName] as const]),
    ...(view.planned === null
      ? []
      : [
          [
            words.planned,
            quantityText(view.planned.quantity, view.planned.unit, language),
          ] as const,
        ]),
  ]);
  if (view.allergenNames.length > 0) {
    const names = words.contains(view.allergenNames.join(', '));
    caution(sheet, `${names} ${CAUTIONS[language].allergens}`);
  }
  if (view.allergensUnknown) caution(sheet, words.allergensUnknown);
  heading(sheet, words.toWeigh);
  table(sheet, {
    columns: [
      { title: '', share: 5 },
      { title: words.component, share: 27 },
      { title: words.lot, share: 20 },
      { title: words.scan, share: 11, align: 'centre' },
      { title: words.target, share: 14, align: 'right' },
      { title: words.actual, share: 18 },
    ],
    rows: weighingRows(view, context),
    rowMm: 9,
  });
  if (view.steps.length > 0) {
    heading(sheet, words.steps);
    table(sheet, {
      columns: [
        { title: '', share: 5 },
        { title: words.step, share: 45 },
        { title: words.limits, share: 27 },
        { title: words.measured, share: 18 },
      ],
      rows: stepRows(view, context),
      rowMm: 8,
    });
  }
  heading(sheet, words.result);
  linesToWrite(sheet, [words.made, words.losses, words.started, words.finished, words.signature]);
  return sheet.finish();
};
