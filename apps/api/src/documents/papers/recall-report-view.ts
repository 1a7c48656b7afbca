import type { RecallChange } from './recall-view';

/** A recall case as a report: what was done, by whom, when, and what came of it. */
export interface RecallReportView {
  readonly code: string;
  readonly mode: 'real' | 'rehearsal';
  readonly reason: string;
  /** What it was opened from, in words. */
  readonly because: readonly string[];
  readonly openedAt: Date;
  readonly frozenAt: Date | null;
  /** Null: the case is still open, and the report is one of work in progress. */
  readonly closedAt: Date | null;
  readonly conclusion: string | null;
  readonly distributedG: string;
  readonly recoveredG: string;
  readonly outstandingG: string;
  /** Null when nothing had been distributed. */
  readonly recoveredPercent: string | null;
  /** Null among them: the counter. */
  readonly notHeardFrom: readonly (string | null)[];
  readonly overRecovered: readonly (string | null)[];
  readonly customers: readonly RecallReportCustomer[];
  readonly lots: number;
  readonly excluded: readonly { readonly lotCode: string; readonly reason: string }[];
  readonly changes: readonly RecallChange[];
  /** Lots with goods on hand and no hold; a rehearsal holds none. */
  readonly notHeld: readonly string[];
  readonly steps: readonly {
    readonly kind: string;
    readonly at: Date;
    readonly afterSeconds: number;
    readonly person: string;
    readonly note: string;
  }[];
}

export interface RecallReportCustomer {
  readonly name: string;
  readonly boxes: string;
  readonly pieces: string;
  readonly distributedG: string;
  readonly recoveredG: string;
  readonly told: boolean;
}
