import { csvText } from '../../platform/csv/csv';
import type { RecallView } from './recalls.dto';

const HEADER = [
  'where',
  'name',
  'address',
  'phone',
  'email',
  'dispatch_or_place',
  'day',
  'lot',
  'item',
  'quantity',
  'unit',
  'mass_grams',
  'on_hold',
];

/** The recall list as one table: customers, then the counter, then what is still here. */
export const recallCsv = ({ scope, customers }: RecallView): string => {
  const customerOf = new Map(customers.map((customer) => [customer.id, customer]));
  const sold = scope.sales.map((sale) => {
    const customer = sale.customerId === null ? undefined : customerOf.get(sale.customerId);
    return [
      sale.customerId === null ? 'counter' : 'customer',
      customer?.name ?? '',
      customer?.addressLines.join(', ') ?? '',
      customer?.phone ?? '',
      customer?.email ?? '',
      sale.dispatch,
      sale.sentOn,
      sale.lot,
      sale.itemName,
      sale.quantity,
      sale.unit,
      sale.massGrams,
      '',
    ];
  });
  const here = scope.lots
    .filter((lot) => Number(lot.onHandQuantity) > 0)
    .map((lot) => [
      'here',
      ...['', '', '', ''],
      lot.place ?? '',
      '',
      lot.code,
      lot.itemName,
      lot.onHandQuantity,
      lot.unit,
      '',
      lot.held ? 'yes' : 'NO',
    ]);
  return csvText(HEADER, [...sold.sort(byWhereAndName), ...here]);
};

const byWhereAndName = (a: readonly string[], b: readonly string[]): number =>
  (b[0] ?? '').localeCompare(a[0] ?? '') ||
  (a[1] ?? '').localeCompare(b[1] ?? '') ||
  (a[6] ?? '').localeCompare(b[6] ?? '');
