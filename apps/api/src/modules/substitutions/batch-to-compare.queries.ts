import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { findVersion, type StoredVersion } from '../recipes';

export interface BatchToCompare {
  readonly plan: Prisma.JsonValue;
  readonly version: StoredVersion;
}

/** The plan of a batch and the recipe that it follows; null for a batch without one. */
export const loadBatchToCompare = async (tx: Tx, id: string): Promise<BatchToCompare | null> => {
  const batch = await tx.batch.findUnique({
    where: { id },
    select: { plan: true, recipeVersionId: true },
  });
  const versionId = batch?.recipeVersionId ?? null;
  if (batch === null || versionId === null) return null;
  const version = await findVersion(tx, versionId);
  return version === null ? null : { plan: batch.plan, version };
};
