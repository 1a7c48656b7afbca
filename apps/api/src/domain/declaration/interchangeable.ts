import { effectivePresence } from '../allergens';
import type { LabelFinding } from '../label/content';
import type { MarketRules } from '../market';
import { LANGUAGES, type LocalText, type Specification } from '../specification';
import { sum, type Decimal } from '../units';
import { fill, wordsIn } from '../words';
import { finding } from './findings';
import { inOnePlace } from './one-place';
import { rankOf } from './order';
import type { WeightedNode } from './weighted';
import { allOf, say } from '../words/say';

/** One of two ingredients that stand in for each other. */
export interface Substitute {
  readonly itemId: string;
  readonly itemName: string;
  /** What is bought now of it; the one of the pair that isn't inside is named from it too. */
  readonly specification: Specification | null;
}

export type Interchangeable = readonly [Substitute, Substitute];

const MOST_PERCENT = 2;

/**
 * Annex VII Part A, point 7: "contains … and/or …" for two ingredients that are alike or can replace
 * each other, under 2 % of the finished food, never for additives or what Annex II lists. Where the
 * point doesn't hold, both are listed as they are, and a warning says why.
 */
export const sayAndOr = (
  entries: readonly WeightedNode[],
  pairs: readonly Interchangeable[],
  finishedG: Decimal,
  market: MarketRules,
): { readonly entries: readonly WeightedNode[]; readonly findings: readonly LabelFinding[] } => {
  if (!market.groupsInList) return { entries, findings: [] };
  let left = entries;
  const findings: LabelFinding[] = [];
  for (const pair of pairs) {
    const ids = pair.map(({ itemId }) => itemId);
    const inside = left.filter(
      (entry) => !entry.unlisted && entry.itemIds.every((id) => ids.includes(id)),
    );
    const [first] = inside;
    if (!first) continue;
    const weightG = sum(inside.map(rankOf));
    const why = weightG.times(100).lessThan(finishedG.times(MOST_PERCENT))
      ? pair.flatMap((one) => notSubstitutable(one, market) ?? [])[0]
      : say`together they are ${MOST_PERCENT} % or more of the product`;
    if (why !== undefined) {
      findings.push(apart(pair, why));
      continue;
    }
    left = [...left.filter((entry) => !inside.includes(entry)), together(pair, inside)];
  }
  return { entries: left, findings };
};

const notSubstitutable = (
  { specification, itemName }: Substitute,
  market: MarketRules,
): string | null => {
  if (!specification) return say`${itemName} has no approved specification`;
  const { ingredient } = specification;
  if (ingredient.additive) return say`${itemName} is an additive`;
  if (ingredient.parts.length > 0) return say`${itemName} has ingredients of its own`;
  const bad = market.allergens.find((allergen) =>
    ['contains', 'unknown'].includes(effectivePresence(specification, allergen, market)),
  );
  return bad === undefined ? null : say`${itemName} holds ${bad}, or may for all that is known`;
};

const apart = (pair: Interchangeable, why: string): LabelFinding => {
  const names = pair.map(({ itemName }) => itemName);
  const detail = say`${allOf(names)} aren’t listed as “and/or”: ${why}.`;
  return finding('warning', 'not-interchangeable', detail, { items: names });
};

const nameIn = ({ specification }: Substitute, language: keyof LocalText): string | undefined =>
  specification?.ingredient.names[language];

const together = (pair: Interchangeable, inside: readonly WeightedNode[]): WeightedNode => {
  const names = LANGUAGES.flatMap((language) => {
    const [a, b] = pair.map((one) => nameIn(one, language));
    return a === undefined || b === undefined
      ? []
      : [[language, fill(wordsIn(language).label.andOr, { a, b })] as const];
  });
  const node = {
    names: Object.fromEntries(names),
    percent: null,
    origins: [],
    flags: {},
    parts: [],
  };
  return inOnePlace(node, inside, []);
};
