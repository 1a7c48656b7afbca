import type { Decimal } from '../units';
import type { CostEntry } from './cost-entries';
import type { Labour, LabourRate, OverheadRule } from './labour-and-overhead';

/** A lot as it was bought. */
export interface ReceivedLot {
  readonly lot: string;
  readonly item: string;
  /** In its own unit; positive. */
  readonly quantity: Decimal;
  /** Price of the whole lot, net of VAT. */
  readonly price: Decimal;
}

export interface MadeOutput {
  readonly lot: string;
  /** Grams, or good pieces. */
  readonly quantity: Decimal;
  readonly massG: Decimal;
  /** Rework takes the material that is in it along; the work stays with the good product. */
  readonly role: 'product' | 'rework';
}

/** One making as recorded. */
export interface MadeBatch {
  readonly id: string;
  readonly day: string;
  readonly makesPieces: boolean;
  /** Corrections are further draws with a negative quantity. */
  readonly draws: readonly {
    readonly lot: string;
    readonly role: string;
    readonly quantity: Decimal;
  }[];
  readonly losses: readonly { readonly kind: string; readonly massG: Decimal }[];
  readonly outputs: readonly MadeOutput[];
  readonly labour: readonly Labour[];
}

export interface MadeFacts {
  readonly received: readonly ReceivedLot[];
  readonly batches: readonly MadeBatch[];
  readonly rates: readonly LabourRate[];
  readonly overhead: OverheadRule;
}

/** What a whole lot cost, and how much of it there was. */
export interface LotCost {
  readonly quantity: Decimal;
  readonly entries: readonly CostEntry[];
}
