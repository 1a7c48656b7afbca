/** A recall on paper: what is recalled, why, and where it went. */
export interface RecallView {
  readonly code: string;
  readonly mode: 'real' | 'rehearsal';
  readonly reason: string;
  readonly openedAt: Date;
  /** When the scope was read from the record. */
  readonly askedAt: Date;
  readonly lots: readonly RecallLot[];
  readonly customers: readonly RecallCustomer[];
  readonly counter: readonly RecallSale[];
  readonly onHand: readonly RecallStock[];
  /** The part of the scope that is neither sent nor here: used up, wasted, sampled. */
  readonly ended: readonly RecallEnd[];
  /** What the record has shown since the scope was frozen, or since the case was opened. */
  readonly changes: readonly RecallChange[];
}

export interface RecallChange {
  readonly lotCode: string;
  readonly change: 'now-in-scope' | 'no-longer-in-scope' | 'quantity';
  readonly fields: readonly {
    readonly field: 'onHand' | 'dispatched' | 'counter';
    readonly was: string;
    readonly is: string;
  }[];
}

export interface RecallLot {
  readonly code: string;
  readonly itemName: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
  /** `YYYY-MM-DD`. */
  readonly date: string | null;
  readonly dateKind: 'best_before' | 'use_by';
}

export interface RecallCustomer {
  readonly name: string;
  readonly addressLines: readonly string[];
  readonly phone: string | null;
  readonly email: string | null;
  readonly told: boolean;
  readonly sales: readonly RecallSale[];
}

export interface RecallSale {
  readonly dispatchCode: string;
  /** `YYYY-MM-DD`. */
  readonly sentOn: string;
  readonly lotCode: string;
  readonly itemName: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
  /** Not in the frozen scope: the record shows it since. */
  readonly learnedLater: boolean;
}

export interface RecallStock {
  readonly lotCode: string;
  readonly itemName: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
  readonly placeName: string | null;
  readonly held: boolean;
  readonly learnedLater: boolean;
}

export interface RecallEnd {
  readonly what: string;
  readonly lotCode: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
}
