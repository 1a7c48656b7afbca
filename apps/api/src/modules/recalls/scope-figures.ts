import { effectiveness } from '../../domain/recall';
import { Decimal } from '../../domain/units';
import type { EffectivenessView, LearnedView, ScopeSaleView, ScopeView } from './scope.dto';

export interface RecoveredGoods {
  readonly customerId: string | null;
  readonly massGrams: string;
}

/** A dispatch line is never changed: two readings of one agree in all of this. */
const lineOf = (sale: ScopeSaleView): string =>
  [sale.dispatch, sale.lot, sale.customerId ?? '', sale.quantity].join('\u0000');

/**
 * What the record shows now and the frozen scope doesn't hold. These goods have to be got back like
 * the others, so customers, papers and figures count them in, and each says that they came later.
 */
export const learnedSince = (frozen: ScopeView | null, current: ScopeView): LearnedView => {
  if (frozen === null) return { lots: [], sales: [] };
  const lots = new Set(frozen.lots.map((lot) => lot.code));
  const known = new Map<string, number>();
  for (const sale of frozen.sales) known.set(lineOf(sale), (known.get(lineOf(sale)) ?? 0) + 1);
  return {
    lots: current.lots.filter((lot) => !lots.has(lot.code)),
    sales: current.sales.filter((sale) => {
      const left = known.get(lineOf(sale)) ?? 0;
      known.set(lineOf(sale), left - 1);
      return left <= 0;
    }),
  };
};

/** Grams that are to be got back of a line: what had come back before the recall is not among them. */
const stillOutGrams = (sale: ScopeSaleView): Decimal =>
  new Decimal(sale.massGrams).minus(sale.returnedMassGrams);

/** Grams sent and not come back before, by customer; the counter under null. */
export const sentGrams = (sales: readonly ScopeSaleView[]): Map<string | null, Decimal> => {
  const sent = new Map<string | null, Decimal>();
  for (const sale of sales) {
    const before = sent.get(sale.customerId) ?? new Decimal(0);
    sent.set(sale.customerId, before.plus(stillOutGrams(sale)));
  }
  return sent;
};

/** Boxes, or loose pieces, that a customer got and had not sent back before. */
export const piecesSent = (
  sales: readonly ScopeSaleView[],
  customerId: string,
  kind: 'box' | 'piece',
): Decimal =>
  sales
    .filter((sale) => sale.customerId === customerId && sale.itemKind === kind)
    .reduce(
      (total, sale) => total.plus(sale.quantity).minus(sale.returnedQuantity),
      new Decimal(0),
    );

export const recoveredGrams = (
  recovered: readonly RecoveredGoods[],
  customerId: string | null,
): Decimal =>
  recovered
    .filter((row) => row.customerId === customerId)
    .reduce((total, row) => total.plus(row.massGrams), new Decimal(0));

/** In grams of food, the one measure that boxes and loose pieces share. */
export const effectivenessView = (
  sales: readonly ScopeSaleView[],
  recovered: readonly RecoveredGoods[],
  nameOf: (customerId: string) => string,
): EffectivenessView => {
  const rows = [...sentGrams(sales)].map(([customerId, distributed]) => ({
    ...(customerId === null ? {} : { customer: nameOf(customerId) }),
    distributed,
    recovered: recoveredGrams(recovered, customerId),
  }));
  const result = effectiveness(rows);
  return {
    distributedGrams: result.distributed.toFixed(3),
    recoveredGrams: result.recovered.toFixed(3),
    outstandingGrams: result.outstanding.toFixed(3),
    recoveredPercent: result.recoveredPercent?.toFixed(1) ?? null,
    overRecovered: [...result.overRecovered],
    notHeardFrom: [...result.notHeardFrom],
  };
};
