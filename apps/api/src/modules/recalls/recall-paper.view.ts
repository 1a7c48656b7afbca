import type { RecallView as RecallPaper } from '../../documents';
import type { RecallView } from './recalls.dto';
import type { ScopeLotView, ScopeSaleView } from './scope.dto';

type Sale = RecallPaper['counter'][number];

const saleOf = (sale: ScopeSaleView, learnedLater: boolean): Sale => ({
  dispatchCode: sale.dispatch,
  sentOn: sale.sentOn,
  lotCode: sale.lot,
  itemName: sale.itemName,
  quantity: sale.quantity,
  unit: sale.unit,
  learnedLater,
});

export const dateOf = (lot: ScopeLotView) => ({
  date: lot.useBy ?? lot.bestBefore,
  dateKind: lot.useBy === null ? ('best_before' as const) : ('use_by' as const),
});

/** Those of the frozen scope and those learned of later: a paper names both. */
export const lotsOnPaper = ({ scope, learned }: RecallView): ScopeLotView[] => [
  ...scope.lots,
  ...learned.lots,
];

const salesTo = ({ scope, learned }: RecallView, customerId: string | null): Sale[] => [
  ...scope.sales
    .filter((sale) => sale.customerId === customerId)
    .map((sale) => saleOf(sale, false)),
  ...learned.sales
    .filter((sale) => sale.customerId === customerId)
    .map((sale) => saleOf(sale, true)),
];

/** The case in the shape of its papers. */
export const paperOf = (view: RecallView): RecallPaper => ({
  code: view.code,
  mode: view.mode === 'rehearsal' ? 'rehearsal' : 'real',
  reason: view.reason,
  openedAt: new Date(view.openedAt),
  askedAt: new Date(view.scope.askedAt),
  lots: lotsOnPaper(view).map((lot) => ({
    code: lot.code,
    itemName: lot.itemName,
    quantity: lot.madeQuantity,
    unit: lot.unit,
    ...dateOf(lot),
  })),
  customers: view.customers.map((customer) => ({
    name: customer.name,
    addressLines: customer.addressLines,
    phone: customer.phone,
    email: customer.email,
    told: customer.told,
    sales: salesTo(view, customer.id),
  })),
  counter: salesTo(view, null),
  onHand: view.here.map(({ lot, place, ...here }) => ({ ...here, lotCode: lot, placeName: place })),
  ended: view.scope.ends.map((end) => ({
    what: end.what,
    lotCode: end.lot,
    quantity: end.quantity,
    unit: end.unit,
  })),
  changes: view.changes.map((change) => ({
    lotCode: change.lot,
    change: change.change,
    fields: change.fields,
  })),
});
