import { Decimal } from '../units';

/** One accepted delivery line of an item. */
export interface Purchase {
  readonly item: string;
  readonly supplier: string;
  readonly day: string;
  readonly quantity: Decimal;
  /** Of the whole line, net of VAT. */
  readonly price: Decimal;
  readonly unit: 'g' | 'pc';
}

export interface PricePoint extends Purchase {
  /** Per kg, or per piece; not rounded. */
  readonly unitPrice: Decimal;
  /** Against the purchase before it from the same supplier. */
  readonly changePercent: Decimal | undefined;
}

const GRAMS_PER_KG = 1000;

/** Purchases of one item by day, each with its price per kg or piece and how it moved. */
export const purchasePriceHistory = (purchases: readonly Purchase[]): PricePoint[] => {
  const last = new Map<string, Decimal>();
  return [...purchases]
    .filter(({ quantity }) => quantity.greaterThan(0))
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
    .map((purchase): PricePoint => {
      const per = purchase.unit === 'g' ? GRAMS_PER_KG : 1;
      const unitPrice = purchase.price.times(per).dividedBy(purchase.quantity);
      const before = last.get(purchase.supplier);
      last.set(purchase.supplier, unitPrice);
      const changePercent =
        before && !before.isZero()
          ? unitPrice.minus(before).dividedBy(before).times(100)
          : undefined;
      return { ...purchase, unitPrice, changePercent };
    });
};
