import { Decimal, sum } from '../../domain/units';
import { dayText, quantityText } from '../kit/formats';
import type { PaperLanguage } from '../kit/language';
import type { PaperContext } from '../kit/paper-context';
import type { Sheet } from '../kit/sheet';
import { heading } from '../kit/sheet-parts';
import { table, type Row } from '../kit/table';
import type { RecallCustomer, RecallSale } from './recall-view';
import { RECALL_WORDS } from './recall.words';

export const saleCells = (sale: RecallSale, { language }: PaperContext): Row['cells'] => [
  [{ text: sale.itemName }, { text: `\n${sale.lotCode}`, strong: true }],
  [{ text: quantityText(sale.quantity, sale.unit, language), strong: true }],
  `${dayText(sale.sentOn, language)}\n${sale.dispatchCode}`,
];

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
      index === 0 ? { form: 'tick' } : '',
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
