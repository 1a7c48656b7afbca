import { Decimal, sum } from '../../domain/units';
import { dayText, numberText, quantityText } from '../kit/formats';
import type { PaperLanguage } from '../kit/language';
import type { PaperContext } from '../kit/paper-context';
import type { Sheet } from '../kit/sheet';
import { heading } from '../kit/sheet-parts';
import { table, type Row } from '../kit/table';
import type { RecallChange, RecallCustomer, RecallSale } from './recall-view';
import { RECALL_WORDS } from './recall.words';

/** What it is, its lot, and whether it came to light only after the scope was frozen. */
export const lotCell = (
  row: { readonly itemName: string; readonly lotCode: string; readonly learnedLater: boolean },
  language: PaperLanguage,
): Row['cells'][number] => [
  { text: row.itemName },
  { text: `\n${row.lotCode}`, strong: true },
  ...(row.learnedLater
    ? [{ text: ` · ${RECALL_WORDS[language].learnedLater}`, strong: true }]
    : []),
];

export const saleCells = (sale: RecallSale, { language }: PaperContext): Row['cells'] => [
  lotCell(sale, language),
  [{ text: quantityText(sale.quantity, sale.unit, language), strong: true }],
  `${dayText(sale.sentOn, language)}\n${sale.dispatchCode}`,
];

/** What a change is, in words and with the quantities then and now. */
export const changeText = (change: RecallChange, language: PaperLanguage): string => {
  const words = RECALL_WORDS[language];
  if (change.fields.length === 0) return words.changeOf[change.change];
  return change.fields
    .map(
      ({ field, was, is }) =>
        `${words.fieldOf[field]} ${numberText(was, language)} → ${numberText(is, language)}`,
    )
    .join(', ');
};

export const customerRows = (customer: RecallCustomer, context: PaperContext): Row[] => {
  const reach = [customer.phone, customer.email].filter((line) => line !== null);
  return customer.sales.map((sale, index) => ({
    cells: [
      index === 0
        ? [
            { text: customer.name, strong: true },
            { text: ['', ...customer.addressLines, ...reach].join('\n') },
          ]
        : '',
      ...saleCells(sale, context),
      index === 0 ? (customer.told ? RECALL_WORDS[context.language].yes : { form: 'tick' }) : '',
    ],
  }));
};

/** The sum of each unit: grams and pieces are never added together. */
export const totalOf = (
  rows: readonly { readonly quantity: string; readonly unit: 'g' | 'pc' }[],
  language: PaperLanguage,
): string => {
  const totals = (['g', 'pc'] as const).flatMap((unit) => {
    const values = rows.filter((row) => row.unit === unit).map((row) => new Decimal(row.quantity));
    return values.length === 0 ? [] : [quantityText(sum(values).toFixed(3), unit, language)];
  });
  return totals.length === 0 ? '0' : totals.join(' + ');
};

export const section = (
  sheet: Sheet,
  title: string,
  rows: readonly Row[],
  columns: readonly { title: string; share: number; align?: 'right' | 'centre' }[],
): void => {
  heading(sheet, title);
  if (rows.length === 0) sheet.text(RECALL_WORDS[sheet.context.language].none);
  else table(sheet, { columns, rows });
};
