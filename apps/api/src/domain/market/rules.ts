import { ANNEX_II, US_NINE } from '../allergens/groups';
import type { MarketCode } from '../label/content';
import { EXCLUSIONS, type Allergen, type Exclusion } from '../specification';
import { Decimal } from '../units';
import { say, type Sentence } from '../words/say';

/** What a market asks of a label, as data. Code asks these fields and never the market's name. */
export interface MarketRules {
  readonly code: MarketCode;
  /** Allergens that must be stated, sulphites by their own limit. */
  readonly allergens: readonly Allergen[];
  readonly exclusions: ReadonlySet<Exclusion>;
  /** A supplier's certificate that no protein is left takes the allergen out. */
  readonly proteinFreeIsExempt: boolean;
  readonly allergenStyle: 'emphasised' | 'contains_line';
  readonly sulphites: { readonly limitMgPerKg: Decimal; readonly limitItself: boolean };
  /** E numbers that may not be in the food at all. */
  readonly bannedAdditives: readonly string[];
  readonly additiveStyle: 'class_first' | 'name_only';
  /** E numbers whose presence calls for the warning about children's attention. */
  readonly childrenWarning: readonly string[];
  readonly sweetenerStatements: boolean;
  readonly waterOmittedUpToPercent: Decimal;
  readonly tail: { readonly underPercent: Decimal; readonly lead: boolean };
  /** Lists of compounds under 2 % may be left out (Annex VII Part E, point 2). */
  readonly compoundListsMayBeLeftOut: boolean;
  /** Fruits, spices, oils and substitutes may stand together (Annex VII Part A, points 4 to 9). */
  readonly groupsInList: boolean;
  readonly quid: boolean;
  readonly nutrition: 'per_100_g' | 'per_serving';
  readonly quantityStyle: 'metric' | 'ounces_and_metric';
  readonly typeSizes: 'x_height' | 'panel_area';
  readonly chocolate: 'directive_2000_36' | 'cfr_163';
  /** An origin that is given calls for that of the primary ingredient. */
  readonly originOfPrimary: boolean;
  readonly milkSolidsStatement: boolean;
  /** Day before month in figures; or the month by its name, where figures would be misread. */
  readonly dateStyle: 'day_first' | 'month_name';
  readonly mayUseEMark: boolean;
  /** Languages that one label must at least speak one of; null when the state decides. */
  readonly language: 'en' | null;
  /** Name of the place where the operator's address must be. */
  readonly operatorIn: Sentence;
}

const ALL_EXCLUSIONS: ReadonlySet<Exclusion> = new Set(EXCLUSIONS);

/** Regulation (EC) No 1333/2008, Article 24 and Annex V. */
const SIX_COLOURS = ['E102', 'E104', 'E110', 'E122', 'E124', 'E129'];

const EU: MarketRules = {
  code: 'EU',
  allergens: ANNEX_II,
  exclusions: ALL_EXCLUSIONS,
  proteinFreeIsExempt: false,
  allergenStyle: 'emphasised',
  sulphites: { limitMgPerKg: new Decimal(10), limitItself: false },
  bannedAdditives: ['E171'], // Regulation (EU) 2022/63.
  additiveStyle: 'class_first',
  childrenWarning: SIX_COLOURS,
  sweetenerStatements: true,
  waterOmittedUpToPercent: new Decimal(5),
  tail: { underPercent: new Decimal(2), lead: false },
  compoundListsMayBeLeftOut: true,
  groupsInList: true,
  quid: true,
  nutrition: 'per_100_g',
  quantityStyle: 'metric',
  typeSizes: 'x_height',
  chocolate: 'directive_2000_36',
  originOfPrimary: true,
  milkSolidsStatement: false,
  dateStyle: 'day_first',
  mayUseEMark: true,
  language: null,
  operatorIn: say`the European Union`,
};

/** The assimilated Regulation; whether it took over the mustard exclusion isn't known (safe form). */
const GB: MarketRules = {
  ...EU,
  code: 'GB',
  exclusions: new Set(EXCLUSIONS.filter((exclusion) => exclusion !== 'mustard_behenic_acid')),
  bannedAdditives: [],
  milkSolidsStatement: true,
  language: 'en',
  operatorIn: say`the United Kingdom`,
};

/** Northern Ireland follows the Union's food law under the Windsor Framework (from memory). */
const NI: MarketRules = {
  ...EU,
  code: 'NI',
  milkSolidsStatement: true,
  language: 'en',
  operatorIn: say`Northern Ireland or the European Union`,
};

/** 21 CFR 101, FALCPA and the FASTER Act (from memory where a test says so). */
const US: MarketRules = {
  code: 'US',
  allergens: [...US_NINE, 'sulphites'],
  exclusions: new Set(['refined_soya_oil']), // Highly refined oils are no major allergen.
  proteinFreeIsExempt: true,
  allergenStyle: 'contains_line',
  sulphites: { limitMgPerKg: new Decimal(10), limitItself: true },
  // Colours that 21 CFR 73 and 74 don't list for food (from memory).
  bannedAdditives: ['E104', 'E122', 'E124', 'E131', 'E142', 'E151', 'E952'],
  additiveStyle: 'name_only',
  childrenWarning: [],
  sweetenerStatements: false,
  waterOmittedUpToPercent: new Decimal(0),
  tail: { underPercent: new Decimal(2), lead: true },
  compoundListsMayBeLeftOut: false,
  groupsInList: false,
  quid: false,
  nutrition: 'per_serving',
  quantityStyle: 'ounces_and_metric',
  typeSizes: 'panel_area',
  chocolate: 'cfr_163',
  originOfPrimary: false,
  milkSolidsStatement: false,
  dateStyle: 'month_name',
  mayUseEMark: false,
  language: 'en',
  operatorIn: say`any country`,
};

export const MARKETS: Readonly<Record<MarketCode, MarketRules>> = { EU, GB, NI, US };
