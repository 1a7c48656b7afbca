import type { Specification } from '../specification';
import { sum, type Decimal } from '../units';

/** A received lot inside a product, for the weight of product that is declared. */
export interface IngoingLot {
  readonly lotId: string;
  readonly lotCode: string;
  readonly itemId: string;
  readonly itemName: string;
  /** Grams that went in at the mixing bowl, undiluted by steam; zero when strained out again. */
  readonly ingoingG: Decimal;
  /** Grams of it that are in the finished weight, well mixed. */
  readonly massG: Decimal;
  readonly processingAid: boolean;
  /** Null: nobody has approved what it is made of, and no label can be. */
  readonly specification: Specification | null;
  /** How it came in: drawn on purpose, left in a tank, or worked in again. */
  readonly via: 'draw' | 'heel' | 'rework';
}

export interface IngoingMix {
  readonly lots: readonly IngoingLot[];
  /** Weight of the finished food that the lots' grams belong to. */
  readonly finishedG: Decimal;
}

/** Grams that went in over all lots: more than the finished weight when water was cooked off. */
export const totalIngoing = (mix: IngoingMix): Decimal => sum(mix.lots.map((lot) => lot.ingoingG));
