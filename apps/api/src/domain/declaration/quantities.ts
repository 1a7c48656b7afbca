import type { Declaration, DeclarationRequest } from './declaration';
import { isVaryingMixture } from './grouping';
import { rankOf, type ListPlace } from './order';
import { quantify } from './quid';
import type { WeightedNode } from './weighted';

/** Whether Article 22 asks for the quantity of an ingredient, or a person wants it stated. */
export const statesQuantity = (
  entry: WeightedNode,
  { quantifiedItemIds }: DeclarationRequest,
): boolean => {
  const { characterises, flavouringUse } = entry.node.flags;
  const asked = entry.itemIds.some((id) => quantifiedItemIds.has(id));
  return (asked || characterises === true) && !flavouringUse && !isVaryingMixture(entry);
};

/** The quantities that are stated, in the form that their sum allows. */
export const quantities = (
  places: readonly ListPlace[],
  request: DeclarationRequest,
): Pick<Declaration, 'quidPercent' | 'quidGrams'> => {
  const { mix, market } = request;
  const due = places.filter(
    ({ entry }) => statesQuantity(entry, request) && rankOf(entry).greaterThan(0),
  );
  if (!market.quid || due.length === 0 || !mix.finishedG.greaterThan(0)) {
    return { quidPercent: new Map(), quidGrams: [] };
  }
  const named = due.map(({ entry }, index) => ({ id: String(index), weightG: rankOf(entry) }));
  const quid = quantify(named, mix.finishedG);
  const figures = due.flatMap(({ entry }, index) => {
    const figure = quid.figures.get(String(index));
    return figure ? [{ entry, figure }] : [];
  });
  return quid.form === 'percent'
    ? { quidPercent: new Map(figures.map(({ entry, figure }) => [entry, figure])), quidGrams: [] }
    : {
        quidPercent: new Map(),
        quidGrams: figures.map(({ entry, figure }) => ({ entry, grams: figure })),
      };
};
