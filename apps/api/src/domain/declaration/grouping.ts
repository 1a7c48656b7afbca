import type { LabelFinding } from '../label/content';
import type { MarketRules } from '../market';
import { LANGUAGES, type GroupKind, type IngredientNode } from '../specification';
import { ZERO, type Decimal } from '../units';
import { wordsIn } from '../words';
import { finding } from './findings';
import { inOnePlace } from './one-place';
import { rankOf } from './order';
import type { WeightedNode } from './weighted';
import { say } from '../words/say';

/** Which ingredients a person wants named together, as the Regulation lets them. */
export interface GroupWishes {
  readonly kinds: ReadonlySet<GroupKind>;
  /** Oils and fats change from one batch to the next, and the list says so. */
  readonly oilsVary: boolean;
}

/** Points 8 and 9: the phrase is a choice and stands behind the plants. */
const OILS: readonly GroupKind[] = ['vegetable_oil', 'vegetable_fat'];

export const isOilGroup = ({ node }: WeightedNode): boolean =>
  node.group !== undefined && OILS.includes(node.group.kind);

/** Points 4 and 5: no quantity is due for such a mixture (Annex VIII, point 1(c)). */
export const isVaryingMixture = (entry: WeightedNode): boolean =>
  entry.node.flags.varyingProportions === true && !isOilGroup(entry);

interface Grouped {
  readonly entries: readonly WeightedNode[];
  readonly findings: readonly LabelFinding[];
}

/**
 * Annex VII Part A, points 4, 5, 8 and 9: ingredients of one kind under one name, placed by their
 * total weight, each named behind it. What must state its quantity stays by itself in an oil group.
 */
export const groupTogether = (
  entries: readonly WeightedNode[],
  wishes: GroupWishes,
  market: MarketRules,
  statesQuantity: (entry: WeightedNode) => boolean,
): Grouped => {
  if (!market.groupsInList) return { entries, findings: [] };
  let left = entries;
  const findings: LabelFinding[] = [];
  for (const kind of wishes.kinds) {
    const members = left.filter(
      (entry) => isMember(entry, kind) && !(isOilGroup(entry) && statesQuantity(entry)),
    );
    if (members.length < 2) continue;
    const varying = !OILS.includes(kind) || wishes.oilsVary;
    const group = groupOf(kind, members, varying);
    left = [...left.filter((entry) => !members.includes(entry)), group];
    if (!OILS.includes(kind)) findings.push(...predominating(members));
  }
  return { entries: left, findings };
};

const isMember = ({ node, unlisted, parts }: WeightedNode, kind: GroupKind): boolean =>
  node.group?.kind === kind && !unlisted && parts.length === 0;

const groupOf = (
  kind: GroupKind,
  members: readonly WeightedNode[],
  varying: boolean,
): WeightedNode => {
  const node: IngredientNode = {
    names: Object.fromEntries(
      LANGUAGES.map((language) => [language, wordsIn(language).groups[kind]]),
    ),
    percent: null,
    origins: [],
    flags: varying ? { varyingProportions: true } : {},
    group: { kind, memberNames: null },
    parts: [],
  };
  return inOnePlace(node, members, members.map(asMember));
};

const asMember = (member: WeightedNode): WeightedNode => ({
  ...member,
  node: { ...member.node, names: member.node.group?.memberNames ?? member.node.names },
});

/** "None significantly predominates": the law gives no figure; twice the next one is our hint. */
const PREDOMINATES = 2;

const predominating = (members: readonly WeightedNode[]): LabelFinding[] => {
  const [first, second] = [...members].sort((a, b) => rankOf(b).comparedTo(rankOf(a)));
  const next: Decimal = second ? rankOf(second) : ZERO;
  if (!first || rankOf(first).lessThanOrEqualTo(next.times(PREDOMINATES))) return [];
  const name = Object.values(first.node.names)[0] ?? '?';
  const detail = say`${name} weighs more than twice the next of its group. Naming them together “in varying proportions” is only for mixtures in which none significantly predominates.`;
  return [finding('warning', 'group-predominates', detail, { ingredient: name })];
};
