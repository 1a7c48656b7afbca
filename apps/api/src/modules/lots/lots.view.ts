import type { Temporal } from 'temporal-polyfill';
import type { Hold } from '../../generated/prisma/client';
import { dayFromDb, optionalDayFromDb } from '../../platform/database/days';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { HoldView, LotView, MovementView } from './lots.dto';
import type { LotRow, MovementRow } from './lots.repository';
import { say } from '../../domain/words/say';

type Names = ReadonlyMap<string, string>;

const nameOf = (names: Names, id: string): string => names.get(id) ?? say`someone who left`;

const holdView = (hold: Hold, names: Names): HoldView => ({
  id: hold.id,
  kind: hold.kind,
  reason: hold.reason,
  placedAt: hold.placedAt.toISOString(),
  placedBy: nameOf(names, hold.placedById),
  releasedAt: hold.releasedAt?.toISOString() ?? null,
  releasedBy: hold.releasedById === null ? null : nameOf(names, hold.releasedById),
  releaseReason: hold.releaseReason,
});

/** Everyone whose name the views of these lots need. */
export const peopleOf = (lots: readonly LotRow[]): string[] =>
  lots.flatMap((lot) =>
    lot.holds.flatMap((hold) =>
      hold.releasedById === null ? [hold.placedById] : [hold.placedById, hold.releasedById],
    ),
  );

export const lotView = (lot: LotRow, today: Temporal.PlainDate, names: Names): LotView => {
  const useBy = optionalDayFromDb(lot.useBy);
  return {
    id: lot.id,
    code: lot.code,
    itemId: lot.itemId,
    itemName: lot.item.name,
    itemKind: lot.item.kind,
    unit: lot.unit,
    madeQuantity: quantityText(lot.madeQuantity),
    madeMassGrams: quantityText(lot.madeMassG),
    onHandQuantity: quantityText(lot.onHandQuantity),
    onHandMassGrams: quantityText(lot.onHandMassG),
    onHandCost: moneyText(lot.onHandCost),
    bestBefore: optionalDayFromDb(lot.bestBefore),
    useBy,
    madeOn: dayFromDb(lot.madeOn),
    expired: useBy !== null && useBy < today.toString(),
    refused: lot.refused,
    takenBackBecause: lot.takenBackReason,
    onHold: lot.holds.some((hold) => hold.releasedAt === null),
    placeId: lot.placeId,
    placeName: lot.place?.name ?? null,
    supplierLotCode: lot.deliveryLine?.supplierLotCode ?? null,
    supplierName: lot.deliveryLine?.delivery.supplier.name ?? null,
    batchCode: lot.batch?.code ?? null,
    outputRole: lot.outputRole,
    specificationId: lot.specificationId,
    recipeVersionId: lot.recipeVersionId,
    holds: lot.holds.map((hold) => holdView(hold, names)),
  };
};

export interface MovementEvents {
  readonly names: Names;
  readonly batchCodes: ReadonlyMap<string, string>;
  readonly dispatchCodes: ReadonlyMap<string, string>;
}

export const movementView = (movement: MovementRow, events: MovementEvents): MovementView => ({
  id: movement.id,
  kind: movement.kind,
  quantity: quantityText(movement.quantity),
  massGrams: quantityText(movement.massG),
  at: movement.at.toISOString(),
  by: nameOf(events.names, movement.userId),
  reason: movement.reason,
  batchCode: movement.batchId === null ? null : (events.batchCodes.get(movement.batchId) ?? null),
  dispatchCode:
    movement.dispatchLineId === null
      ? null
      : (events.dispatchCodes.get(movement.dispatchLineId) ?? null),
  reversesId: movement.reversesId,
  reversed: movement.reversedBy !== null,
});
