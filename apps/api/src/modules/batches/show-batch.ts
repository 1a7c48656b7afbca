import { checksDue, stepChecks } from '../../domain/making';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import {
  balanceView,
  lossView,
  mouldUseView,
  outputView,
  readingView,
  shownDraw,
} from './batch-parts';
import type { BatchSummaryView, BatchView } from './batches.view';
import { linesOf } from './bench-lines';
import { readPlan } from './open-batch';
import { loadParts, placeAmong, type PlaceInMaking } from './parts.queries';
import { partsView } from './parts.view';
import { takenReading } from './readings.queries';
import { type BatchSummary, wholeIncluded } from './whole-batch';

/** What a batch makes: by its recipe, or what its tank holds. */
export const itemOfBatch = (batch: BatchSummary): NonNullable<BatchSummary['tank']>['item'] =>
  orNotFound(batch.recipeVersion?.recipe.item ?? batch.tank?.item, 'item of batch', batch.code);

export const summaryView = (
  batch: BatchSummary,
  operatorName: string,
  part: PlaceInMaking | undefined,
): BatchSummaryView => {
  const item = itemOfBatch(batch);
  return {
    id: batch.id,
    code: batch.code,
    kind: batch.kind,
    state: batch.state,
    itemId: item.id,
    itemName: item.name,
    recipeNumber: batch.recipeVersion?.number ?? null,
    tankName: batch.tank?.name ?? null,
    operatorName,
    plannedQuantity: readPlan(batch.plan).quantity,
    part: part ?? null,
    openedAt: batch.openedAt.toISOString(),
    endedAt: batch.endedAt?.toISOString() ?? null,
  };
};

/** Everything that the bench needs of one batch. Call it in a snapshot or in a booking. */
export const showBatch = async (tx: Tx, id: string, today: string): Promise<BatchView> => {
  const found = await tx.batch.findUnique({ where: { id }, include: wholeIncluded });
  const batch = orNotFound(found, 'batch', id);
  const operator = await tx.user.findUnique({ where: { id: batch.operatorId } });
  const parts = await loadParts(tx, batch.partOfId ?? batch.id);
  const readings = batch.readings.map(takenReading);
  const due = checksDue(stepChecks(batch.recipeVersion?.steps ?? []), readings);
  return {
    ...summaryView(batch, operator?.name ?? '', placeAmong(parts, id)),
    recipeVersionId: batch.recipeVersionId,
    unit: itemOfBatch(batch).unit,
    plannedTrays: readPlan(batch.plan).trays,
    placeId: batch.placeId,
    labourMinutes: batch.labourMinutes?.toFixed(2) ?? null,
    endReason: batch.endReason,
    imbalanceReason: batch.imbalanceReason,
    lines: await linesOf(tx, batch, today),
    draws: batch.draws.map(shownDraw),
    losses: batch.losses.map(lossView),
    readings: batch.readings.map(readingView),
    readingsDue: due.map((check) => ({
      step: check.step,
      measure: check.measure,
      low: check.low?.toFixed() ?? null,
      high: check.high?.toFixed() ?? null,
    })),
    mouldUses: batch.mouldUses.map(mouldUseView),
    outputs: batch.outputs.map(outputView),
    balance: balanceView(batch),
    parts: partsView(parts),
    version: batch.version,
  };
};
