export interface TraceReportView {
  /** What the trace was asked for, as a lot's code and name or `mould M-0042`. */
  readonly subject: string;
  /** Code to scan, when the subject has one. */
  readonly subjectCode: string | null;
  readonly askedAt: Date;
  readonly roots: readonly TraceLot[];
  readonly behind: readonly TraceLot[];
  readonly ahead: readonly TraceLot[];
  readonly sent: readonly TraceSale[];
  readonly throughTank: boolean;
  readonly balance: TraceBalance | null;
}

export interface TraceLot {
  readonly code: string;
  readonly itemName: string;
  readonly madeOn: string;
  readonly made: string;
  readonly onHand: string;
  readonly unit: 'g' | 'pc';
  /** Supplier and supplier's lot of what was received; null for what was made here. */
  readonly supplierLot: string | null;
  readonly batchCode: string | null;
  /** Grams shared with the subject; null when it can't be told. */
  readonly sharedMassG: string | null;
  readonly held: boolean;
}

export interface TraceSale {
  /** Null: over the counter. */
  readonly customerName: string | null;
  readonly sentOn: string;
  readonly dispatchCode: string;
  readonly lotCode: string;
  readonly itemName: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
}

export interface TraceBalance {
  readonly unit: 'g' | 'pc';
  readonly sources: readonly TraceBalanceLine[];
  readonly ends: readonly TraceBalanceLine[];
  readonly sourceQuantity: string;
  readonly unexplainedQuantity: string;
  readonly accountedPercent: string;
}

export interface TraceBalanceLine {
  /** Kind of source or end, as the balance names it. */
  readonly kind: string;
  /** Kind of the loss, or the code of a lot or batch. */
  readonly note: string | null;
  readonly quantity: string;
  readonly percent: string;
}
