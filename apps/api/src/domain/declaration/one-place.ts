import type { IngredientNode } from '../specification';
import { sum, ZERO } from '../units';
import { rankOf } from './order';
import type { WeightedNode } from './weighted';

/** Several entries under one name: its place is that of their weight together. */
export const inOnePlace = (
  node: IngredientNode,
  entries: readonly WeightedNode[],
  parts: readonly WeightedNode[],
): WeightedNode => ({
  node,
  origins: [],
  ingoingG: sum(entries.map(rankOf)),
  massG: sum(entries.map((entry) => entry.massG ?? ZERO)),
  parts,
  itemIds: [...new Set(entries.flatMap((entry) => entry.itemIds))],
  lotCodes: [...new Set(entries.flatMap((entry) => entry.lotCodes))],
  unlisted: false,
});
