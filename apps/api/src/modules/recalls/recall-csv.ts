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
  'learned_later',
];

/** The recall list as one table: customers, then the counter, then what is still here. */
export const recallCsv = ({ scope, learned, here, customers }: RecallView): string => {
  const customerOf = new Map(customers.map((customer) => [customer.id, customer]));
  const later = new Set(learned.sales);
  const sold = [...scope.sales, ...learned.sales].map((sale) => {
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
      later.has(sale) ? 'yes' : '',
    ];
  });
  const stock = here.map((row) => [
    'here',
    ...['', '', '', ''],
    row.place ?? '',
    '',
    row.lot,
    row.itemName,
    row.quantity,
    row.unit,
    '',
    row.held ? 'yes' : 'NO',
    row.learnedLater ? 'yes' : '',
  ]);
  return csvText(HEADER, [...sold.sort(byWhereAndName), ...stock]);
};

const byWhereAndName = (a: readonly string[], b: readonly string[]): number =>
  (b[0] ?? '').localeCompare(a[0] ?? '') ||
  (a[1] ?? '').localeCompare(b[1] ?? '') ||
  (a[6] ?? '').localeCompare(b[6] ?? '');
