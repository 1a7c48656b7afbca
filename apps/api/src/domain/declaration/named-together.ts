import type { LabelFinding } from '../label/content';
import type { DeclarationRequest } from './declaration';
import { groupTogether } from './grouping';
import { sayAndOr } from './interchangeable';
import { statesQuantity } from './quantities';
import type { WeightedNode } from './weighted';

/** Groups and substitutes, where a person wants them and the market has them. */
export const namedTogether = (
  entries: readonly WeightedNode[],
  request: DeclarationRequest,
): { readonly entries: readonly WeightedNode[]; readonly findings: readonly LabelFinding[] } => {
  const { groups, interchangeable, quantifiedItemIds, mix, market } = request;
  // What states its quantity is named by itself.
  const free = interchangeable.filter(
    (pair) => !pair.some(({ itemId }) => quantifiedItemIds.has(itemId)),
  );
  const pairs = sayAndOr(entries, free, mix.finishedG, market);
  const due = (entry: WeightedNode): boolean => statesQuantity(entry, request);
  const grouped = groupTogether(pairs.entries, groups, market, due);
  return { ...grouped, findings: [...pairs.findings, ...grouped.findings] };
};
