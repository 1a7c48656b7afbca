import { sum } from '../../domain/units';
import { optionalDayFromDb } from '../../platform/database/days';
import { decimalFromDb, moneyText, quantityText } from '../../platform/database/decimals';
import type { LossView, MouldUseView, ReadingView } from './bench.view';
import { drawView, type DrawView } from './draw.view';
import type { BatchBalanceView, BatchOutputView } from './output.view';
import type { WholeBatch } from './whole-batch';

export const balanceView = (batch: WholeBatch): BatchBalanceView => {
  const drawn = sum(batch.draws.map(({ massG }) => decimalFromDb(massG)));
  const standing = batch.outputs.filter(({ takenBackAt }) => takenBackAt === null);
  const made = sum(standing.map(({ madeMassG }) => decimalFromDb(madeMassG)));
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
  withdrawnBecause: reading.withdrawal?.reason ?? null,
});

export const mouldUseView = (use: WholeBatch['mouldUses'][number]): MouldUseView => ({
  id: use.id,
  mouldTag: use.mould.tag,
  designName: use.mould.design.name,
  cavitiesFilled: use.cavitiesFilled,
  rejectCavities: use.rejectCavities,
  at: use.at.toISOString(),
  withdrawnBecause: use.withdrawal?.reason ?? null,
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

export const outputView = (lot: WholeBatch['outputs'][number]): BatchOutputView => ({
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
  takenBackBecause: lot.takenBackReason,
});

export const shownDraw = (draw: WholeBatch['draws'][number]): DrawView => ({
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
