import type { LabelFinding } from '../label/content';
import { finding, type AdditiveForm, type IngoingMix } from '../declaration';
import type { MarketRules } from '../market';
import type { IngredientNode, Language } from '../specification';
import { fill, wordsIn } from '../words';
import { say } from '../words/say';

const coloursOf = (node: IngredientNode): IngredientNode[] => [
  ...(node.additive?.functionalClass === 'colour' ? [node] : []),
  ...node.parts.flatMap(coloursOf),
];

/** The warning about children's attention, naming the colours that call for it; or null. */
export const childrenWarning = (
  mix: IngoingMix,
  market: MarketRules,
  language: Language,
  form: AdditiveForm,
): string | null => {
  const names = mix.lots
    .flatMap((lot) => (lot.specification ? coloursOf(lot.specification.ingredient) : []))
    .filter((node) => market.childrenWarning.includes(node.additive?.eNumber ?? ''))
    .map((node) =>
      form === 'name' ? (node.names[language] ?? node.additive?.eNumber) : node.additive?.eNumber,
    );
  const once = [...new Set(names)].filter((name) => name !== undefined);
  if (once.length === 0) return null;
  return fill(wordsIn(language).label.childrenAttention, { c: once.join(', ') });
};

/**
 * Chocolate as such has no colour permission, and none may come in by carry-over (Regulation (EC)
 * No 1333/2008, Annex II; from memory). Coloured cocoa butter on the outside is a decoration.
 */
export const colouredChocolate = (mix: IngoingMix, market: MarketRules): LabelFinding[] =>
  market.chocolate !== 'directive_2000_36'
    ? []
    : mix.lots.flatMap(({ specification, lotCode, itemName }) => {
        if (!specification?.statements.chocolateKind) return [];
        const colours = coloursOf(specification.ingredient);
        if (colours.length === 0) return [];
        const detail = say`Lot ${lotCode} (${itemName}) is sold as chocolate and holds a colour. Chocolate itself may not be coloured; only decorations may. Ask the supplier under which name it is sold.`;
        return [finding('refusal', 'coloured-chocolate', detail, { lotCode, itemName })];
      });
