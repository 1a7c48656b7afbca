import { Temporal } from 'temporal-polyfill';
import { Decimal, ZERO, sum } from '../units';
import type { Purchase } from './planned';

/** How an item is bought. */
export interface SupplyTerms {
  readonly item: string;
  readonly supplier: string;
  readonly leadDays: number;
  /** Grams or pieces of one pack; absent: any quantity. */
  readonly packQuantity?: Decimal;
  /** Price of one gram or piece, net; absent: not known. */
  readonly pricePerUnit?: Decimal;
}

export interface ShoppingLine {
  readonly item: string;
  readonly needed: Decimal;
  /** Whole packs; absent when the item comes in any quantity. */
  readonly packs: number | undefined;
  readonly ordered: Decimal;
  readonly cost: Decimal | undefined;
  readonly neededOn: string;
  /** Last day on which to order it. */
  readonly orderBy: string;
}

export interface SupplierOrder {
  /** Undefined: nobody is known to sell these. */
  readonly supplier: string | undefined;
  readonly lines: readonly ShoppingLine[];
  readonly orderBy: string;
  /** Of the lines whose price is known. */
  readonly cost: Decimal;
  readonly pricesMissing: boolean;
  /** Money that the order lies under the supplier's minimum; zero when it doesn't. */
  readonly belowMinimum: Decimal;
}

/** What to order where, until when, in whole packs, the most pressing order first. */
export const shoppingList = (
  purchases: readonly Purchase[],
  terms: readonly SupplyTerms[],
  minimumOrders: ReadonlyMap<string, Decimal>,
): SupplierOrder[] => {
  const termsOf = new Map(terms.map((term): [string, SupplyTerms] => [term.item, term]));
  const items = [...new Set(purchases.map(({ item }) => item))];
  const bySupplier = new Map<string | undefined, ShoppingLine[]>();
  for (const item of items) {
    const term = termsOf.get(item);
    const own = purchases.filter((purchase) => purchase.item === item);
    const lines = bySupplier.get(term?.supplier) ?? [];
    bySupplier.set(term?.supplier, [...lines, lineOf(item, own, term)]);
  }
  return [...bySupplier]
    .map(([supplier, lines]) => orderOf(supplier, lines, minimumOrders))
    .sort((a, b) => (a.orderBy < b.orderBy ? -1 : a.orderBy > b.orderBy ? 1 : 0));
};

const earliest = (days: readonly string[]): string => [...days].sort()[0] ?? '';

const lineOf = (
  item: string,
  purchases: readonly Purchase[],
  term: SupplyTerms | undefined,
): ShoppingLine => {
  const needed = sum(purchases.map(({ quantity }) => quantity));
  const pack = term?.packQuantity;
  const packs = pack ? needed.dividedBy(pack).ceil() : undefined;
  const ordered = pack && packs ? packs.times(pack) : needed;
  const neededOn = earliest(purchases.map((purchase) => purchase.neededOn));
  const orderBy = Temporal.PlainDate.from(neededOn)
    .subtract({ days: term?.leadDays ?? 0 })
    .toString();
  const cost = term?.pricePerUnit?.times(ordered);
  return { item, needed, packs: packs?.toNumber(), ordered, cost, neededOn, orderBy };
};

const orderOf = (
  supplier: string | undefined,
  lines: readonly ShoppingLine[],
  minimumOrders: ReadonlyMap<string, Decimal>,
): SupplierOrder => {
  const cost = sum(lines.map((line) => line.cost ?? ZERO));
  const minimum = (supplier === undefined ? undefined : minimumOrders.get(supplier)) ?? ZERO;
  return {
    supplier,
    lines,
    orderBy: earliest(lines.map((line) => line.orderBy)),
    cost,
    pricesMissing: lines.some((line) => line.cost === undefined),
    belowMinimum: Decimal.max(ZERO, minimum.minus(cost)),
  };
};
