import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { nextCode } from '../codes';
import { refuseSellerUnlessPacking } from './batch-head.queries';
import type { OpenBatchDto } from './batches.dto';
import { kindOf, loadVersionToMake, planOf, type VersionToMake } from './open-batch';

export interface OpenedBatch {
  readonly id: string;
  readonly code: string;
}

/** Opens a batch in the caller's transaction, so that whatever it was opened for goes with it. */
export const openBatch = async (tx: Tx, by: By, dto: OpenBatchDto): Promise<OpenedBatch> =>
  openBatchOf(tx, by, await loadVersionToMake(tx, dto), dto);

/** @param partOfId the head of the making that it is a part of */
export const openBatchOf = async (
  tx: Tx,
  by: By,
  version: VersionToMake,
  dto: OpenBatchDto,
  partOfId: string | null = null,
): Promise<OpenedBatch> => {
  const kind = kindOf(version);
  refuseSellerUnlessPacking(by, kind);
  const plan = planOf(version, dto);
  const id = newId();
  const code = await nextCode(tx, by, 'batch');
  await tx.batch.create({
    data: {
      id,
      code,
      kind,
      recipeVersionId: version.id,
      operatorId: by.userId,
      placeId: dto.placeId ?? null,
      plan: plan as unknown as Prisma.InputJsonObject,
      partOfId,
      openedAt: by.at,
    },
    select: { id: true },
  });
  noteInJournal(by, {
    action: 'batch.opened',
    subjectKind: 'batch',
    subjectId: code,
    detail: { item: version.recipe.item.name, recipe: version.number },
  });
  return { id, code };
};
