import type { MarketRules } from '../market';
import {
  presenceOf,
  type Allergen,
  type AllergenOrigin,
  type IngredientNode,
  type Presence,
  type Specification,
} from '../specification';
import { EXCLUSION_SOURCES } from './groups';

/** Whether an origin must be declared in a market: nothing takes it out there. */
export const isDeclared = (origin: AllergenOrigin, market: MarketRules): boolean => {
  if (!market.allergens.includes(origin.allergen)) return false;
  if (market.proteinFreeIsExempt && origin.freeOfProtein === true) return false;
  const { exclusion } = origin;
  if (exclusion === undefined || !market.exclusions.has(exclusion)) return true;
  return !EXCLUSION_SOURCES[exclusion].includes(origin.allergen);
};

/** The origins of one ingredient alone that a market wants declared, each allergen once. */
export const declaredOrigins = (
  origins: readonly AllergenOrigin[],
  market: MarketRules,
): AllergenOrigin[] => {
  const seen = new Set<Allergen>();
  return origins.filter((origin) => {
    const fresh = isDeclared(origin, market) && !seen.has(origin.allergen);
    if (fresh) seen.add(origin.allergen);
    return fresh;
  });
};

/** All origins of an ingredient and of everything inside it. */
export const originsWithin = (node: IngredientNode): AllergenOrigin[] => [
  ...node.origins,
  ...node.parts.flatMap(originsWithin),
];

/**
 * What a label of a market must take a specification to mean for one allergen. An excluded origin
 * turns a stated `contains` into `absent`; a tree that names a live origin is `contains` whatever
 * the table says; silence stays `unknown`. Sulphites are an amount and are judged elsewhere.
 */
export const effectivePresence = (
  specification: Specification,
  allergen: Allergen,
  market: MarketRules,
): Presence => {
  const origins = originsWithin(specification.ingredient).filter((o) => o.allergen === allergen);
  if (origins.some((origin) => isDeclared(origin, market))) return 'contains';
  const stated = presenceOf(specification.allergens, allergen);
  return stated === 'contains' && origins.length > 0 ? 'absent' : stated;
};
