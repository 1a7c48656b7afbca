import { Fraction } from 'fraction.js';
import type { AuditedBatch, Rational } from '../auditor/rationals';
import { contentsOf, sumOf, toMilligramText } from '../auditor/rationals';

/** Whole milligrams as text with three places. */
export const grams = (mg: bigint): string => toMilligramText(new Fraction(mg).div(1000));

export interface AuditedLot {
  readonly code: string;
  readonly pieces: boolean;
  readonly item: string;
  readonly received: boolean;
  readonly madeMg: bigint;
  readonly madeQuantity: bigint;
  onHandMg: bigint;
  /** Pieces, or milligrams of what is weighed. */
  onHandQuantity: bigint;
}

export interface AuditedMaking {
  readonly id: string;
  readonly code: string;
  state: 'open' | 'finished' | 'abandoned';
  draws: {
    readonly id: string;
    readonly lot: string;
    readonly quantity: bigint;
    readonly mg: bigint;
  }[];
  losses: { readonly kind: string; readonly mg: bigint; readonly lot?: string }[];
  readonly outputs: string[];
  /** Lots that may still have been in the tank when this charge was made. */
  readonly heels: string[];
}

export interface AuditedEnd {
  readonly lot: string;
  readonly kind: string;
  readonly mg: bigint;
}

/**
 * The auditor's own books of one history: only what was asked for and acknowledged, in whole
 * milligrams, with the rule of the last piece ("taking all takes all the weight") worked out anew.
 */
export class AuditorsBooks {
  readonly lots = new Map<string, AuditedLot>();
  readonly makings: AuditedMaking[] = [];
  /** Ways out other than draws. */
  readonly ends: AuditedEnd[] = [];
  /** Ways in other than the origin. */
  readonly gains: AuditedEnd[] = [];

  lot(code: string): AuditedLot {
    const lot = this.lots.get(code);
    if (!lot) throw new Error(`the auditor knows no lot ${code}`);
    return lot;
  }

  born(lot: Omit<AuditedLot, 'onHandMg' | 'onHandQuantity'>): void {
    this.lots.set(lot.code, { ...lot, onHandMg: lot.madeMg, onHandQuantity: lot.madeQuantity });
  }

  /** Weight of a quantity: its part of what is on hand, half up; all of it when all is taken. */
  weightOf(lot: AuditedLot, quantity: bigint): bigint {
    if (quantity === lot.onHandQuantity) return lot.onHandMg;
    const twice = 2n * lot.onHandMg * quantity + lot.onHandQuantity;
    return twice / (2n * lot.onHandQuantity);
  }

  take(code: string, quantity: bigint): bigint {
    const lot = this.lot(code);
    const mg = this.weightOf(lot, quantity);
    lot.onHandQuantity -= quantity;
    lot.onHandMg -= mg;
    return mg;
  }

  putBack(code: string, quantity: bigint, mg: bigint): void {
    const lot = this.lot(code);
    lot.onHandQuantity += quantity;
    lot.onHandMg += mg;
  }

  batches(): AuditedBatch[] {
    return this.makings.map((making) => ({
      id: making.code,
      draws: [
        ...making.draws.map((draw) => ({ lot: draw.lot, grams: grams(draw.mg) })),
        ...making.heels.map((lot) => ({ lot, grams: '0' })),
      ],
      losses: making.losses.map((loss) => ({
        grams: grams(loss.mg),
        ...(loss.lot === undefined ? {} : { lot: loss.lot }),
        volatile: loss.kind === 'steam',
      })),
      outputs: making.outputs.map((lot) => ({ lot, grams: grams(this.lot(lot).madeMg) })),
    }));
  }

  /** Exact grams of a root at each end, by the name of the end: a balance worked out by hand. */
  balance(root: string): { sources: Rational; ends: Map<string, Rational> } {
    const batches = this.batches();
    const ends = new Map<string, Rational>();
    const add = (kind: string, share: Rational, mg: bigint): void => {
      const before = ends.get(kind) ?? new Fraction(0);
      ends.set(kind, before.add(share.mul(new Fraction(mg).div(1000))));
    };
    const shareIn = (lot: string): Rational =>
      contentsOf(batches, lot).get(root) ?? new Fraction(0);
    for (const lot of this.lots.values()) add('on-hand', shareIn(lot.code), lot.onHandMg);
    for (const end of this.ends) add(end.kind, shareIn(end.lot), end.mg);
    for (const making of this.makings) this.addMaking(making, shareIn, add);
    const gains = this.gains.map((gain) => shareIn(gain.lot).mul(new Fraction(gain.mg).div(1000)));
    const made = new Fraction(this.lot(root).madeMg).div(1000);
    return { sources: made.add(sumOf(gains)), ends };
  }

  private addMaking(
    making: AuditedMaking,
    shareIn: (lot: string) => Rational,
    add: (kind: string, share: Rational, mg: bigint) => void,
  ): void {
    const held = making.losses.filter((loss) => loss.lot !== undefined);
    const total = (rows: readonly { readonly mg: bigint }[]): bigint =>
      rows.reduce((sum, row) => sum + row.mg, 0n);
    const mixMg = total(making.draws) - total(held);
    const weighed = sumOf([
      ...making.draws.map((draw) => shareIn(draw.lot).mul(draw.mg)),
      ...held.map((loss) => shareIn(loss.lot ?? '').mul(-loss.mg)),
    ]);
    const mix = mixMg === 0n ? new Fraction(0) : weighed.div(mixMg);
    for (const loss of making.losses) {
      add(`loss ${loss.kind}`, loss.lot === undefined ? mix : shareIn(loss.lot), loss.mg);
    }
    if (making.state === 'open') {
      const left = mixMg - total(making.losses.filter((loss) => loss.lot === undefined));
      add(`open-batch ${making.code}`, mix, left);
    }
  }
}
