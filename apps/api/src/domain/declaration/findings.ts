import { effectivePresence, EXCLUSION_SOURCES, originsWithin } from '../allergens';
import type { LabelFinding } from '../label/content';
import type { MarketRules } from '../market';
import type { Allergen, IngredientNode } from '../specification';
import { claimsNatural } from './flavouring';
import type { IngoingLot, IngoingMix } from './ingoing';
import { named, say, type Sentence } from '../words/say';

export const finding = (
  severity: LabelFinding['severity'],
  code: string,
  detail: Sentence,
  facts: LabelFinding['facts'] = {},
  subject: string | null = null,
): LabelFinding => ({ code, severity, detail, subject, facts });

const nameOf = (node: IngredientNode): string => Object.values(node.names)[0] ?? '?';

const nodesWithin = (node: IngredientNode): IngredientNode[] => [
  node,
  ...node.parts.flatMap(nodesWithin),
];

/** What keeps a mix from being declared at all, or needs to be known before it is. */
export const mixFindings = (mix: IngoingMix, market: MarketRules): LabelFinding[] => {
  const findings: LabelFinding[] = [];
  if (!mix.finishedG.greaterThan(0)) {
    const detail = say`There is no finished weight, so nothing can be declared. Enter the weight.`;
    findings.push(finding('refusal', 'no-weight', detail));
  }
  if (mix.lots.length === 0) {
    const detail = say`No ingredient lot is known inside this product, so it can’t be declared.`;
    findings.push(finding('refusal', 'nothing-inside', detail));
  }
  return [...findings, ...mix.lots.flatMap((lot) => lotFindings(lot, market))];
};

const lotFindings = (lot: IngoingLot, market: MarketRules): LabelFinding[] => {
  const facts = { lotCode: lot.lotCode, itemName: lot.itemName };
  const { specification } = lot;
  if (!specification) {
    const detail = say`Lot ${lot.lotCode} (${lot.itemName}) has no approved specification. Approve one from the supplier’s document first.`;
    return [finding('refusal', 'unspecified', detail, facts)];
  }
  const nodes = nodesWithin(specification.ingredient);
  return [
    ...unknownAllergens(lot, market),
    ...nodes.flatMap((node) => bannedAdditive(node, lot, market)),
    ...nodes.flatMap((node) => wrongClaims(node, lot)),
  ];
};

const unknownAllergens = (lot: IngoingLot, market: MarketRules): LabelFinding[] => {
  const { specification } = lot;
  if (!specification) return [];
  const unknown = market.allergens.filter((allergen): allergen is Allergen =>
    allergen === 'sulphites'
      ? specification.statements.sulphiteMgPerKg === null &&
        effectivePresence(specification, allergen, market) === 'unknown'
      : effectivePresence(specification, allergen, market) === 'unknown',
  );
  if (unknown.length === 0) return [];
  const detail = say`The specification of lot ${lot.lotCode} (${lot.itemName}) doesn’t say whether it holds ${unknown.map(named).join(', ')}. Unknown is not absent: ask the supplier before a label is printed.`;
  const facts = { lotCode: lot.lotCode, itemName: lot.itemName, allergens: unknown };
  return [finding('refusal', 'allergen-unknown', detail, facts)];
};

const bannedAdditive = (
  node: IngredientNode,
  lot: IngoingLot,
  market: MarketRules,
): LabelFinding[] => {
  const eNumber = node.additive?.eNumber;
  if (!eNumber || !market.bannedAdditives.includes(eNumber)) return [];
  const detail = say`Lot ${lot.lotCode} (${lot.itemName}) holds ${eNumber} (${nameOf(node)}), which may not be in food for the market ${market.code}.`;
  const facts = { lotCode: lot.lotCode, itemName: lot.itemName, eNumber };
  return [finding('refusal', 'additive-banned', detail, facts)];
};

const wrongClaims = (node: IngredientNode, lot: IngoingLot): LabelFinding[] => {
  const facts = { lotCode: lot.lotCode, itemName: lot.itemName, ingredient: nameOf(node) };
  const mismatched = originsWithin({ ...node, parts: [] }).filter(
    ({ exclusion, allergen }) => exclusion && !EXCLUSION_SOURCES[exclusion].includes(allergen),
  );
  const natural = node.flavouring && !node.flavouring.natural && claimsNatural(node.names);
  return [
    ...mismatched.map(({ exclusion, allergen }) => {
      const detail = say`${nameOf(node)} in lot ${lot.lotCode} claims the exclusion ${named(exclusion ?? '')} for ${named(allergen)}, which it doesn’t cover. The allergen is declared.`;
      return finding('warning', 'exclusion-mismatch', detail, facts);
    }),
    ...(natural
      ? [
          finding(
            'refusal',
            'natural-claim',
            say`${nameOf(node)} in lot ${lot.lotCode} is called natural but isn’t stated as natural.`,
            facts,
          ),
        ]
      : []),
  ];
};
