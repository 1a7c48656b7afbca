import type { Language } from '../specification';
import { type Sentence } from '../words/say';

export type MarketCode = 'EU' | 'GB' | 'NI' | 'US';

/** A stretch of text with one look. `allergen` must stand out by font, style or background. */
export interface TextRun {
  readonly text: string;
  readonly emphasis: 'none' | 'allergen' | 'strong';
}

export type BlockKind =
  | 'name'
  | 'ingredients'
  | 'contains'
  | 'precaution'
  | 'statement'
  | 'vegetable_fats'
  | 'storage'
  | 'operator'
  | 'origin';

/** One paragraph of a label, in one language (null when it has none, as an address). */
export interface TextBlock {
  readonly kind: BlockKind;
  readonly language: Language | null;
  readonly runs: readonly TextRun[];
}

export interface NutritionRow {
  readonly label: string;
  /** Per 100 g in Europe, per serving in the United States, ready to print. */
  readonly amount: string;
  /** Per portion, or per container in a dual column. */
  readonly portion: string | null;
  /** Per cent of the reference intake or daily value. */
  readonly percent: string | null;
  /** The same of the container, in the second of two columns (United States). */
  readonly portionPercent?: string;
  /** An "of which" row stands under the row before it. */
  readonly indented: boolean;
}

export interface NutritionPanel {
  readonly language: Language;
  readonly title: string;
  readonly amountHeading: string;
  readonly portionHeading: string | null;
  readonly percentHeading: string | null;
  /** There are two pairs of columns: amount and per cent, of a serving and of the container. */
  readonly portionPercentHeading?: string;
  /** Serving lines of the United States panel. */
  readonly lead: readonly string[];
  readonly rows: readonly NutritionRow[];
  readonly notes: readonly string[];
}

/** A figure that stands once on the pack, whatever the number of languages. */
export interface QuantityMark {
  /** As `125 g`, `240 g, 24 pieces` or `Net Wt 3.5 oz (100 g)`. */
  readonly text: string;
  /** Height of the digits. */
  readonly minDigitHeightMm: number;
  readonly eMark: boolean;
  readonly minEMarkHeightMm: number;
}

/** The date words in each language, and the date once: `Best before / À consommer…: 28/02/2027`. */
export interface DateMark {
  readonly words: readonly { readonly language: Language; readonly text: string }[];
  readonly date: string;
  /** The last day the mark promises, `YYYY-MM-DD`: what a bar code carries. */
  readonly machineDate: string;
  readonly kind: 'best_before' | 'use_by';
}

export interface PriceMark {
  readonly price: string;
  /** As `55.20 €/kg`; null when it equals the selling price. */
  readonly unitPrice: string | null;
}

/** Everything that is printed on one label, decided and worded. A layout only places it. */
export interface LabelContent {
  readonly market: MarketCode;
  readonly languages: readonly Language[];
  readonly lotCode: string;
  /** As printed: with the L before it. */
  readonly lotMark: string;
  readonly blocks: readonly TextBlock[];
  readonly quantity: QuantityMark | null;
  readonly date: DateMark;
  readonly nutrition: readonly NutritionPanel[];
  readonly price: PriceMark | null;
  /** Least height of a lower-case x, in mm, from the largest surface of the pack. */
  readonly minXHeightMm: number;
}

/** Something to know before printing. A refusal can't be accepted away; a warning can, by name. */
export interface LabelFinding {
  readonly code: string;
  readonly severity: 'refusal' | 'decision' | 'warning' | 'note';
  readonly detail: Sentence;
  /** What exactly is to be decided, as one allergen or one day; null where the code says it all. */
  readonly subject: string | null;
  readonly facts: Readonly<Record<string, unknown>>;
}
