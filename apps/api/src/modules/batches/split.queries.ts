import { splitProposal, type BoxRun, type SlotSupply, type SplitRefusal } from '../../domain/split';
import type { Result } from '../../domain/refusals';
import type { Tx } from '../../platform/database/prisma';
import { type BatchHead, loadDraws, type StoredDraw } from './batch-head.queries';

export interface SlotLine {
  readonly itemId: string;
  readonly itemName: string;
  readonly piecesPerBox: number;
}

/** A draw that is in the batch still, with the item of its lot. */
export interface PackedDraw extends StoredDraw {
  readonly itemId: string;
  readonly unit: string;
}

export interface Packing {
  readonly slots: readonly SlotLine[];
  /** In the order in which they were drawn. */
  readonly draws: readonly PackedDraw[];
}

/** What was drawn into a pack batch, and how many of each piece a box takes. */
export const loadPacking = async (tx: Tx, head: BatchHead): Promise<Packing> => {
  const version = await tx.recipeVersion.findUnique({
    where: { id: head.recipeVersionId ?? '' },
    include: { lines: { include: { component: true } } },
  });
  const boxesAsWritten = version?.yieldPieces ?? 1;
  const perBox = new Map<string, SlotLine>();
  for (const line of version?.lines ?? []) {
    if (line.role !== 'slot') continue;
    const before = perBox.get(line.componentId)?.piecesPerBox ?? 0;
    perBox.set(line.componentId, {
      itemId: line.componentId,
      itemName: line.component.name,
      piecesPerBox: before + line.quantity.toNumber() / boxesAsWritten,
    });
  }
  const draws = (await loadDraws(tx, head.id)).filter((draw) => !draw.reversed && !draw.isReversal);
  const lots = await tx.lot.findMany({
    where: { id: { in: draws.map(({ lotId }) => lotId) } },
    select: { id: true, itemId: true, unit: true },
  });
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  return {
    slots: [...perBox.values()],
    draws: draws.map((draw) => ({
      ...draw,
      itemId: byId.get(draw.lotId)?.itemId ?? '',
      unit: byId.get(draw.lotId)?.unit ?? 'g',
    })),
  };
};

const supplyOf = (slot: SlotLine, draws: readonly PackedDraw[]): SlotSupply => ({
  item: slot.itemName,
  piecesPerBox: slot.piecesPerBox,
  lots: draws
    .filter(({ itemId }) => itemId === slot.itemId)
    .map(({ lotCode, quantity }) => ({ lot: lotCode, pieces: quantity.toNumber() })),
});

/** Runs of boxes that hold pieces of the same lots throughout. */
export const proposeSplit = (packing: Packing, boxes: number): Result<BoxRun[], SplitRefusal> =>
  splitProposal(
    boxes,
    packing.slots.map((slot) => supplyOf(slot, packing.draws)),
  );
