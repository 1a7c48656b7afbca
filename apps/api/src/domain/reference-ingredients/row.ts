import {
  FAT_KINDS,
  POLYOL_KINDS,
  SINGLE_PARTS,
  SUGAR_KINDS,
  statedGrams,
  type CompositionPer100g,
} from '../specification';
import { Decimal, ZERO } from '../units';

type Figure =
  | (typeof SINGLE_PARTS)[number]
  | (typeof FAT_KINDS)[number]
  | (typeof SUGAR_KINDS)[number]
  | (typeof POLYOL_KINDS)[number]
  | 'fatFreeCocoa'
  | 'milkSolids'
  | 'dairyAsh'
  | 'syrupDe';

/** Grams per 100 g as plain figures; whatever isn't named is none. */
export type Figures = Partial<Record<Figure, number>>;

export interface ReferenceIngredient {
  readonly key: string;
  readonly names: { readonly en: string; readonly fr: string };
  readonly composition: CompositionPer100g;
  /** Published table and its row, or `from memory`. */
  readonly source: string;
  /** True when some figure was computed or assumed rather than read from the source. */
  readonly derived: boolean;
  readonly note: string | null;
  readonly statedGrams: Decimal;
  /** The row doesn't come to 97–103 g: something is missing from it. */
  readonly flagged: boolean;
}

export interface ReferenceRow {
  readonly key: string;
  readonly en: string;
  readonly fr: string;
  readonly source: string;
  readonly figures: Figures;
  readonly derived?: boolean;
  readonly note?: string;
}

const LEAST_STATED_G = 97;
const MOST_STATED_G = 103;

const group = <K extends Figure>(figures: Figures, kinds: readonly K[]): Record<K, Decimal> =>
  Object.fromEntries(kinds.map((kind) => [kind, new Decimal(figures[kind] ?? 0)])) as Record<
    K,
    Decimal
  >;

/**
 * Builds a composition from figures. Tables count salt in ash; here ash is what is left of it. The
 * dry matter of cocoa and milk is stated by the row, milk's minerals too where they differ from ash.
 */
export const compositionOf = (figures: Figures): CompositionPer100g => {
  const of = (figure: Figure): Decimal => new Decimal(figures[figure] ?? 0);
  const fat = group(figures, FAT_KINDS);
  const solids = of('glucose').plus(of('maltose')).plus(of('higherSaccharides'));
  const milkSolids = of('milkSolids');
  const milky = milkSolids.greaterThan(0) || figures.dairyAsh !== undefined;
  return {
    ...group(figures, SINGLE_PARTS),
    ash: Decimal.max(0, of('ash').minus(of('salt'))),
    fat,
    sugars: group(figures, SUGAR_KINDS),
    polyols: group(figures, POLYOL_KINDS),
    cocoaSolids: {
      cocoaButter: fat.cocoaButter,
      fatFreeCocoa: of('fatFreeCocoa'),
      milkSolids,
      milkFat: milky ? fat.milkFat : ZERO,
    },
    ...(figures.syrupDe === undefined
      ? {}
      : { glucoseSyrup: { solids, dextroseEquivalent: of('syrupDe') } }),
    ...(figures.dairyAsh === undefined ? {} : { dairyAsh: of('dairyAsh') }),
  };
};

export const referenceIngredient = (row: ReferenceRow): ReferenceIngredient => {
  const composition = compositionOf(row.figures);
  const stated = statedGrams(composition);
  return {
    key: row.key,
    names: { en: row.en, fr: row.fr },
    composition,
    source: row.source,
    derived: row.derived ?? false,
    note: row.note ?? null,
    statedGrams: stated,
    flagged: stated.lessThan(LEAST_STATED_G) || stated.greaterThan(MOST_STATED_G),
  };
};
