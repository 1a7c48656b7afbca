import type { Decimal } from '../units';

export interface LotQuantity {
  readonly lot: string;
  readonly gtin?: string;
  readonly quantity: Decimal;
  /** Pieces have no unit of measure in EPCIS; weights are grams. */
  readonly unit: 'g' | 'pc';
}

interface Fact {
  readonly id: string;
  /** RFC 3339. */
  readonly at: string;
  /** The workshop's offset at that moment, as +hh:mm. */
  readonly offset: string;
  readonly recordedAt?: string;
  readonly place?: string;
}

/** What the workshop recorded, in its own words; `epcisEvent` turns each into one event. */
export type TraceFact =
  | (Fact & {
      readonly kind: 'received';
      readonly delivery: string;
      readonly supplier: string;
      readonly lots: readonly LotQuantity[];
      readonly supplierLot?: string;
      readonly bestBefore?: string;
    })
  | (Fact & {
      readonly kind: 'made';
      readonly batch: string;
      /** A charge of a tank has a step of its own: the standard's vocabulary has none for it. */
      readonly step: 'making' | 'charging';
      readonly inputs: readonly LotQuantity[];
      readonly outputs: readonly LotQuantity[];
      readonly bestBefore?: string;
    })
  | (Fact & {
      readonly kind: 'packed';
      readonly batch: string;
      readonly box: LotQuantity;
      readonly contents: readonly LotQuantity[];
      /**
       * The packing made other box lots too. What of the contents is in which isn't recorded, so no
       * quantity is stated: the whole of it under each would be counted twice.
       */
      readonly contentsShared?: boolean;
    })
  | (Fact & {
      readonly kind: 'shipped';
      readonly dispatch: string;
      /** Absent: sold over the counter. */
      readonly customer?: string;
      readonly lots: readonly LotQuantity[];
    })
  | (Fact & { readonly kind: 'destroyed'; readonly lots: readonly LotQuantity[] });
