import type { MouldForUse } from '../../domain/making';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import type { BatchHead } from './batch-head.queries';

export interface MouldToUse extends MouldForUse {
  readonly id: string;
  /** The design that the batch's recipe version is cast in, when it names one. */
  readonly recipeDesignId: string | null;
}

/** @throws RefusalError not-found */
export const loadMouldForUse = async (
  tx: Tx,
  tag: string,
  head: BatchHead,
): Promise<MouldToUse> => {
  const rows = await tx.$queryRaw<MouldToUse[]>`
    SELECT mould.id, mould.tag, mould.state, design.id AS "designId", design.name AS "designName",
      design.rows * design.columns AS cavities,
      (SELECT batch.code FROM mould_use JOIN batch ON batch.id = mould_use.batch_id
        WHERE mould_use.mould_id = mould.id AND batch.state = 'open' AND batch.id <> ${head.id}::uuid
          AND NOT EXISTS (SELECT 1 FROM mould_use_withdrawal WHERE mould_use_id = mould_use.id)
        LIMIT 1) AS "otherBatch",
      (SELECT mould_design_id FROM recipe_version WHERE id = ${head.recipeVersionId}::uuid)
        AS "recipeDesignId"
    FROM mould JOIN mould_design AS design ON design.id = mould.design_id
    WHERE mould.tag = ${tag}`;
  return orNotFound(rows[0], 'mould', tag);
};
