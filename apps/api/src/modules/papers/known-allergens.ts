import { MARKETS } from '../../domain/market';
import type { MarketCode } from '../../domain/label/content';
import type { Tx } from '../../platform/database/prisma';
import { loadSubgraph } from '../tracing';

export interface KnownAllergens {
  /** Codes of what any lot behind contains. */
  readonly contains: readonly string[];
  /** Some lot behind leaves an allergen open, or has no specification at all. */
  readonly unknown: boolean;
}

/** What the suppliers' specifications behind some lots say; an allergen that none names is unknown. */
export const knownAllergens = async (
  tx: Tx,
  lotIds: readonly string[],
  market: string,
): Promise<KnownAllergens> => {
  if (lotIds.length === 0) return { contains: [], unknown: false };
  const { lots } = await loadSubgraph(tx, [...lotIds], 'back');
  const received = await tx.lot.findMany({
    where: {
      id: { in: lots.map(([id]) => id) },
      batchId: null,
      item: { kind: { not: 'packaging' } },
    },
    select: { specification: { include: { allergens: true } } },
  });
  const asked = MARKETS[market as MarketCode].allergens;
  const presences = received.map(
    ({ specification }) =>
      new Map(specification?.allergens.map((row) => [row.allergen, row.presence]) ?? []),
  );
  const says = (allergen: string, presence: string): boolean =>
    presences.some((stated) => (stated.get(allergen) ?? 'unknown') === presence);
  return {
    contains: asked.filter((allergen) => says(allergen, 'contains')),
    unknown: asked.some((allergen) => says(allergen, 'unknown')),
  };
};
