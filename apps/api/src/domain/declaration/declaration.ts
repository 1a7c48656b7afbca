import type { LabelFinding } from '../label/content';
import type { MarketRules } from '../market';
import type { Allergen, AllergenOrigin } from '../specification';
import type { Decimal } from '../units';
import type { GroupWishes } from './grouping';
import type { IngoingMix } from './ingoing';
import type { Interchangeable } from './interchangeable';
import type { ListPlace } from './order';
import type { SulphiteSum } from './sulphites';
import type { WeightedNode } from './weighted';

export interface DeclarationRequest {
  readonly mix: IngoingMix;
  readonly market: MarketRules;
  /** Compounds with their lists in brackets, or all taken apart into one list. */
  readonly listForm: 'nested' | 'flattened';
  /** Items whose quantity must be stated because the name or a picture speaks of them. */
  readonly quantifiedItemIds: ReadonlySet<string>;
  readonly groups: GroupWishes;
  readonly interchangeable: readonly Interchangeable[];
}

/** A list of ingredients before it is put into words: order, allergens and quantities decided. */
export interface Declaration {
  readonly request: DeclarationRequest;
  readonly places: readonly ListPlace[];
  readonly quidPercent: ReadonlyMap<WeightedNode, Decimal>;
  /** Quantities above 100 %, printed as grams for 100 g of product. */
  readonly quidGrams: readonly { readonly entry: WeightedNode; readonly grams: Decimal }[];
  /** Everything that must be declared, exclusions of the market taken out, sulphites by amount. */
  readonly allergens: readonly Allergen[];
  readonly origins: readonly AllergenOrigin[];
  readonly sulphites: SulphiteSum;
  readonly findings: readonly LabelFinding[];
}
