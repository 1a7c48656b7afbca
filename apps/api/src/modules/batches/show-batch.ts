import { checksDue, stepChecks, type Verdict } from '../../domain/making';
import { sum } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { optionalDayFromDb } from '../../platform/database/days';
import { decimalFromDb, moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import type {
  BatchBalanceView,
  BatchOutputView,
  BatchSummaryView,
  BatchView,
} from './batches.view';
import { drawView, type LossView, type MouldUseView, type ReadingView } from './batches.view';
import { linesOf } from './bench-lines';
import { readPlan } from './open-batch';

export const summaryIncluded = {
  recipeVersion: { include: { recipe: { include: { item: true } } } },
  tank: { include: { item: true } },
} satisfies Prisma.BatchInclude;

const included = {
  ...summaryIncluded,
  draws: {
    include: { lot: { include: { item: true } }, reversedBy: { select: { id: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  },
  losses: {
    include: { lot: { select: { code: true } }, reversedBy: { select: { id: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  },
  readings: { orderBy: [{ at: 'asc' }, { id: 'asc' }] },
  mouldUses: {
    include: { mould: { include: { design: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  },
  outputs: {
    include: { item: true, holds: { where: { releasedAt: null }, select: { id: true } } },
    orderBy: { code: 'asc' },
  },
} satisfies Prisma.BatchInclude;

type Summary = Prisma.BatchGetPayload<{ include: typeof summaryIncluded }>;
export type WholeBatch = Prisma.BatchGetPayload<{ include: typeof included }>;

/** What a batch makes: by its recipe, or what its tank holds. */
export const itemOfBatch = (batch: Summary): NonNullable<Summary['tank']>['item'] =>
  orNotFound(batch.recipeVersion?.recipe.item ?? batch.tank?.item, 'item of batch', batch.code);

export const summaryView = (batch: Summary, operatorName: string): BatchSummaryView => {
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
    openedAt: batch.openedAt.toISOString(),
    endedAt: batch.endedAt?.toISOString() ?? null,
  };
};

const balanceView = (batch: WholeBatch): BatchBalanceView => {
  const drawn = sum(batch.draws.map(({ massG }) => decimalFromDb(massG)));
  const made = sum(batch.outputs.map(({ madeMassG }) => decimalFromDb(madeMassG)));
  const lost = sum(batch.losses.map(({ massG }) => decimalFromDb(massG)));
  return {
    drawnGrams: quantityText(drawn),
    madeGrams: quantityText(made),
    lostGrams: quantityText(lost),
    differenceGrams: quantityText(drawn.minus(made).minus(lost)),
    drawnCost: moneyText(sum(batch.draws.map(({ cost }) => decimalFromDb(cost)))),
  };
};

export const readingView = (reading: WholeBatch['readings'][number]): ReadingView => ({
  id: reading.id,
  measure: reading.measure,
  value: reading.value.toFixed(),
  low: reading.low?.toFixed() ?? null,
  high: reading.high?.toFixed() ?? null,
  verdict: reading.verdict,
  step: reading.step,
  instrument: reading.instrument,
  correctiveAction: reading.correctiveAction,
  at: reading.at.toISOString(),
});

export const mouldUseView = (use: WholeBatch['mouldUses'][number]): MouldUseView => ({
  id: use.id,
  mouldTag: use.mould.tag,
  designName: use.mould.design.name,
  cavitiesFilled: use.cavitiesFilled,
  rejectCavities: use.rejectCavities,
  at: use.at.toISOString(),
});

export const lossView = (loss: WholeBatch['losses'][number]): LossView => ({
  id: loss.id,
  kind: loss.kind,
  massGrams: quantityText(loss.massG),
  lotCode: loss.lot?.code ?? null,
  note: loss.note,
  at: loss.at.toISOString(),
  reversed: loss.reversedBy !== null || loss.reversesId !== null,
});

const outputView = (lot: WholeBatch['outputs'][number]): BatchOutputView => ({
  id: lot.id,
  lotCode: lot.code,
  itemId: lot.itemId,
  itemName: lot.item.name,
  role: lot.outputRole ?? 'product',
  unit: lot.unit,
  quantity: quantityText(lot.madeQuantity),
  massGrams: quantityText(lot.madeMassG),
  cost: moneyText(lot.madeCost),
  onHandQuantity: quantityText(lot.onHandQuantity),
  bestBefore: optionalDayFromDb(lot.bestBefore),
  useBy: optionalDayFromDb(lot.useBy),
  held: lot.holds.length > 0,
});

const shownDraw = (draw: WholeBatch['draws'][number]) => ({
  ...drawView({
    id: draw.id,
    lot: {
      code: draw.lot.code,
      itemId: draw.lot.itemId,
      itemName: draw.lot.item.name,
      unit: draw.lot.unit,
    },
    role: draw.role,
    share: {
      quantity: decimalFromDb(draw.quantity),
      massG: decimalFromDb(draw.massG),
      cost: decimalFromDb(draw.cost),
    },
    at: draw.at,
    reason: draw.reason,
  }),
  reversed: draw.reversedBy !== null || draw.reversesId !== null,
});

/** Everything that the bench needs of one batch. Call it in a snapshot or in a booking. */
export const showBatch = async (tx: Tx, id: string, today: string): Promise<BatchView> => {
  const found = await tx.batch.findUnique({ where: { id }, include: included });
  const batch = orNotFound(found, 'batch', id);
  const operator = await tx.user.findUnique({ where: { id: batch.operatorId } });
  const readings = batch.readings.map((row) => ({ ...row, verdict: row.verdict as Verdict }));
  const due = checksDue(stepChecks(batch.recipeVersion?.steps ?? []), readings);
  return {
    ...summaryView(batch, operator?.name ?? ''),
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
    version: batch.version,
  };
};
