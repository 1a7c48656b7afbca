import { sum, type Decimal } from '../units';

/**
 * What 100 g of something is made of, in grams. The parts before `cocoaSolids` sum to 100; salt is
 * not counted again in `ash`. `higherSaccharides` are the long sugars of syrups (three units and
 * more); `starch` is starch as such.
 */
export interface CompositionPer100g {
  readonly water: Decimal;
  readonly fat: Readonly<Record<FatKind, Decimal>>;
  readonly sugars: Readonly<Record<SugarKind, Decimal>>;
  readonly polyols: Readonly<Record<PolyolKind, Decimal>>;
  readonly higherSaccharides: Decimal;
  readonly starch: Decimal;
  readonly protein: Decimal;
  readonly fibre: Decimal;
  readonly ash: Decimal;
  readonly salt: Decimal;
  /** Ethanol by weight, not by volume. */
  readonly alcohol: Decimal;
  readonly organicAcids: Decimal;
  /** Whatever else there is (theobromine, gums); stated so that the sum closes. */
  readonly other: Decimal;
  readonly cocoaSolids: CocoaSolids;
  /** Glucose syrup among the figures above, when the sheet states its dextrose equivalent. */
  readonly glucoseSyrup?: GlucoseSyrup;
  /**
   * Part of `ash` and `salt` that is milk's, which dissolves; absent: read from the milk solids
   * (domain/composition).
   */
  readonly dairyAsh?: Decimal;
}

/**
 * Cuts across the list above: its solids are the higher saccharides first, then the maltose, then
 * the glucose. Water activity needs the DE, because long sugars bind far less water than short ones.
 */
export interface GlucoseSyrup {
  readonly solids: Decimal;
  /** Dextrose equivalent of the solids, per cent. */
  readonly dextroseEquivalent: Decimal;
}

/** Cuts across the list above: which of those grams are cocoa's and milk's dry matter. */
export interface CocoaSolids {
  readonly cocoaButter: Decimal;
  readonly fatFreeCocoa: Decimal;
  /** Dry milk solids, milk fat included. */
  readonly milkSolids: Decimal;
  readonly milkFat: Decimal;
}

export const FAT_KINDS = ['cocoaButter', 'milkFat', 'nutFat', 'otherFat'] as const;
export type FatKind = (typeof FAT_KINDS)[number];

export const SUGAR_KINDS = [
  'sucrose', 'glucose', 'fructose', 'lactose', 'maltose', 'otherSugar',
] as const; // prettier-ignore
export type SugarKind = (typeof SUGAR_KINDS)[number];

export const POLYOL_KINDS = [
  'sorbitol', 'maltitol', 'isomalt', 'lactitol', 'xylitol', 'mannitol', 'erythritol', 'glycerol',
  'hydrogenatedStarch',
] as const; // prettier-ignore
export type PolyolKind = (typeof POLYOL_KINDS)[number];

export const COCOA_PARTS = ['cocoaButter', 'fatFreeCocoa', 'milkSolids', 'milkFat'] as const;

/** The fields of one figure each that count towards the sum of 100 g. */
export const SINGLE_PARTS = [
  'water', 'higherSaccharides', 'starch', 'protein', 'fibre', 'ash', 'salt', 'alcohol',
  'organicAcids', 'other',
] as const; // prettier-ignore

/** Grams accounted for in 100 g: 100 when the composition closes. */
export const statedGrams = (composition: CompositionPer100g): Decimal =>
  sum([
    ...SINGLE_PARTS.map((part) => composition[part]),
    ...FAT_KINDS.map((kind) => composition.fat[kind]),
    ...SUGAR_KINDS.map((kind) => composition.sugars[kind]),
    ...POLYOL_KINDS.map((kind) => composition.polyols[kind]),
  ]);
