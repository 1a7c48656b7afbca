import type { AllergenOrigin, IngredientNode } from '../specification';
import { sum, ZERO, type Decimal } from '../units';
import type { IngoingLot } from './ingoing';

/** An ingredient with its grams in the product, alike ingredients of several lots made one. */
export interface WeightedNode {
  readonly node: IngredientNode;
  readonly origins: readonly AllergenOrigin[];
  /** Null when a supplier keeps the percentage back. */
  readonly ingoingG: Decimal | null;
  readonly massG: Decimal | null;
  readonly parts: readonly WeightedNode[];
  readonly itemIds: readonly string[];
  readonly lotCodes: readonly string[];
  /** Not listed for its own sake: processing aids, and additives carried over without effect. */
  readonly unlisted: boolean;
}

const scaled = (weight: Decimal | null, percent: Decimal | null): Decimal | null =>
  weight && percent ? weight.times(percent).dividedBy(100) : null;

const weighted = (
  node: IngredientNode,
  ingoingG: Decimal | null,
  massG: Decimal | null,
  lot: IngoingLot,
): WeightedNode => ({
  node,
  origins: node.origins,
  ingoingG,
  massG,
  parts: node.parts.map((part) =>
    weighted(part, scaled(ingoingG, part.percent), scaled(massG, part.percent), lot),
  ),
  itemIds: [lot.itemId],
  lotCodes: [lot.lotCode],
  unlisted: node.flags.processingAid === true || node.additive?.carriedOver === true,
});

/** The ingredient of one lot with its grams. `sulphites` marks a lot whose sulphites must show. */
export const weighLot = (lot: IngoingLot, sulphites: boolean): WeightedNode | null => {
  if (!lot.specification) return null;
  const root = weighted(lot.specification.ingredient, lot.ingoingG, lot.massG, lot);
  const unlisted = root.unlisted || lot.processingAid;
  if (!sulphites || namesSulphites(root)) return { ...root, unlisted };
  return { ...root, unlisted, origins: [...root.origins, { allergen: 'sulphites' }] };
};

const namesSulphites = (node: WeightedNode): boolean =>
  node.origins.some((origin) => origin.allergen === 'sulphites') || node.parts.some(namesSulphites);

/** Ingredients are alike when they are named, classed and built alike; percentages may differ. */
const likeness = (entry: WeightedNode): string => {
  const { names, usName, additive, flavouring, vegetableFat, group, flags } = entry.node;
  const below = entry.parts.map(likeness).sort();
  const own = [names, usName, additive, flavouring, vegetableFat, group, flags];
  return JSON.stringify([...own, entry.origins, entry.unlisted, below]);
};

const unite = (alike: readonly WeightedNode[]): WeightedNode => {
  const [first] = alike;
  if (!first) throw new RangeError('nothing to unite');
  return {
    ...first,
    ingoingG: total(alike.map((entry) => entry.ingoingG)),
    massG: total(alike.map((entry) => entry.massG)),
    parts: mergeAlike(alike.flatMap((entry) => entry.parts)),
    itemIds: [...new Set(alike.flatMap((entry) => entry.itemIds))],
    lotCodes: [...new Set(alike.flatMap((entry) => entry.lotCodes))],
  };
};

const total = (weights: readonly (Decimal | null)[]): Decimal | null =>
  weights.includes(null) ? null : sum(weights.map((weight) => weight ?? ZERO));

/** One entry per kind of ingredient, in the order of first appearance, grams added up. */
export const mergeAlike = (entries: readonly WeightedNode[]): WeightedNode[] => {
  const groups = new Map<string, WeightedNode[]>();
  for (const entry of entries) {
    const key = likeness(entry);
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()].map(
    (group) => (group.length === 1 ? group[0] : null) ?? unite(group),
  );
};

const sameness = ({ allergen, exclusion, freeOfProtein }: AllergenOrigin): string =>
  JSON.stringify([allergen, exclusion, freeOfProtein]);

/**
 * Takes compounds apart into their last ingredients. An allergen that only the compound names goes
 * down to its first part, so that it isn't lost with the compound's name. A mixture in varying
 * proportions stays together: it has its place by its total weight.
 */
export const flatten = (entry: WeightedNode): WeightedNode[] => {
  if (entry.parts.length === 0 || entry.node.flags.varyingProportions) return [entry];
  const below = entry.parts.flatMap(flatten);
  // A part's excluded origin doesn't stand for the compound's own: both must match to the letter.
  const named = new Set(below.flatMap((part) => part.origins.map((origin) => sameness(origin))));
  const lost = entry.origins.filter((origin) => !named.has(sameness(origin)));
  const [first, ...others] = below;
  if (!first || lost.length === 0) return below;
  return [{ ...first, origins: [...first.origins, ...lost] }, ...others];
};
