import type { MarketRules } from '../market';
import type { Allergen, Presence, Specification } from '../specification';
import { effectivePresence } from './declared';

/** Worse first: what is contained is said even when another lot leaves it unknown. */
const WORSE: readonly Presence[] = ['contains', 'unknown', 'may_contain', 'absent'];

/**
 * What a food sold loose is said to hold: the worst of all lots inside. A lot without a
 * specification (null) leaves everything unknown; so does a food in which no lot is known.
 */
export const counterPresence = (
  specifications: readonly (Specification | null)[],
  market: MarketRules,
): Readonly<Record<string, Presence>> =>
  Object.fromEntries(
    market.allergens.map((allergen) => [allergen, worst(specifications, allergen, market)]),
  );

const worst = (
  specifications: readonly (Specification | null)[],
  allergen: Allergen,
  market: MarketRules,
): Presence => {
  const found = specifications.map((specification) =>
    specification ? effectivePresence(specification, allergen, market) : 'unknown',
  );
  return WORSE.find((presence) => found.includes(presence)) ?? 'unknown';
};
