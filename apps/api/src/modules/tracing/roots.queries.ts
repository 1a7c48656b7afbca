import { Temporal } from 'temporal-polyfill';
import type { Prisma } from '../../generated/prisma/client';
import { DEFAULT_LOT_PATTERN, type ScanContext } from '../../domain/identification';
import type { MouldInspection } from '../../domain/mould-scope';
import type { Tx } from '../../platform/database/prisma';

const idsOf = async (tx: Tx, where: Prisma.LotWhereInput): Promise<string[]> => {
  const lots = await tx.lot.findMany({ where, select: { id: true }, orderBy: { code: 'asc' } });
  return lots.map((lot) => lot.id);
};

export const lotByCode = (tx: Tx, code: string) =>
  tx.lot.findUnique({ where: { code }, select: { id: true, code: true } });

export const lotsOf = (
  tx: Tx,
  kind: 'supplier' | 'delivery' | 'specification' | 'recipe-version' | 'item',
  id: string,
): Promise<string[]> => {
  switch (kind) {
    case 'supplier':
      return idsOf(tx, { deliveryLine: { delivery: { supplierId: id } } });
    case 'delivery':
      return idsOf(tx, { deliveryLine: { deliveryId: id } });
    case 'specification':
      return idsOf(tx, { specificationId: id });
    case 'recipe-version':
      return idsOf(tx, { recipeVersionId: id });
    case 'item':
      return idsOf(tx, { itemId: id });
  }
};

export const madeByBatches = (tx: Tx, batchIds: readonly string[]): Promise<string[]> =>
  idsOf(tx, { batchId: { in: [...new Set(batchIds)] } });

export const madeByBatchCode = (tx: Tx, code: string): Promise<string[]> =>
  idsOf(tx, { batch: { code } });

export const lotsOfDeliveryLine = (tx: Tx, id: string): Promise<string[]> =>
  idsOf(tx, { deliveryLineId: id });

export const sentWith = (tx: Tx, code: string): Promise<string[]> =>
  idsOf(tx, { dispatchLines: { some: { dispatch: { code } } } });

export const bySupplierLotCode = (tx: Tx, code: string): Promise<string[]> =>
  idsOf(tx, { deliveryLine: { supplierLotCode: code } });

/** A code that has no form of ours: a supplier's lot as typed, or a lot of an older pattern. */
export const byAnyCode = (tx: Tx, text: string): Promise<string[]> =>
  idsOf(tx, {
    OR: [{ code: text.trim() }, { deliveryLine: { supplierLotCode: text.trim() } }],
  });

export const mouldWithHistory = (tx: Tx, tag: string) =>
  tx.mould.findUnique({
    where: { tag },
    include: { inspections: true, uses: { select: { at: true, batchId: true } } },
  });

export const mouldsOfDesign = async (tx: Tx, designId: string): Promise<string[]> => {
  const moulds = await tx.mould.findMany({ where: { designId }, orderBy: { tag: 'asc' } });
  return moulds.map((mould) => mould.tag);
};

export const verdictOf = (row: { readonly result: string }): MouldInspection['verdict'] =>
  row.result === 'sound' || row.result === 'chipped' ? row.result : 'retired';

export const tankByTag = (tx: Tx, tag: string) => tx.tank.findUnique({ where: { tag } });

export const tankWithHistory = (tx: Tx, id: string) =>
  tx.tank.findUnique({
    where: { id },
    include: {
      batches: {
        where: { state: 'finished' },
        include: { draws: { select: { lotId: true } }, outputs: { select: { id: true } } },
      },
      emptyings: true,
    },
  });

export const placeById = (tx: Tx, id: string) => tx.place.findUnique({ where: { id } });

export const placeByTag = (tx: Tx, tag: string) => tx.place.findUnique({ where: { tag } });

export const readingById = (tx: Tx, id: string) => tx.reading.findUnique({ where: { id } });

/** The nearest readings of the same measure and place that were in limits, before and after. */
export const soundReadingsAround = async (
  tx: Tx,
  { placeId, measure, at }: { placeId: string; measure: string; at: Date },
  now: string,
): Promise<{ from: string; to: string }> => {
  const sound = { placeId, measure, verdict: 'in' };
  const [before, after, place] = [
    await tx.reading.findFirst({ where: { ...sound, at: { lt: at } }, orderBy: { at: 'desc' } }),
    await tx.reading.findFirst({ where: { ...sound, at: { gt: at } }, orderBy: { at: 'asc' } }),
    await tx.lot.aggregate({ where: { placeId }, _min: { createdAt: true } }),
  ];
  return {
    from: (before?.at ?? place._min.createdAt ?? at).toISOString(),
    to: after?.at.toISOString() ?? now,
  };
};

/**
 * Lots that were, or may have been, in a place at some moment of a window: there now or moved away
 * from it since the window began, born by its end, and not used up before it. A lot that came only
 * after the window is taken in too when the journal can't tell: too many is the safe side.
 */
export const keptInPlace = async (
  tx: Tx,
  placeId: string,
  from: string,
  to: string,
): Promise<string[]> => {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT lot.id FROM lot
    WHERE (lot.place_id = ${placeId}::uuid
        OR EXISTS (SELECT 1 FROM journal_entry entry
          WHERE entry.subject_kind = 'lot' AND entry.subject_id = lot.code
            AND entry.action = 'lot.moved' AND entry.at >= ${from}::timestamptz
            AND entry.detail ->> 'from' = (SELECT name FROM place WHERE id = ${placeId}::uuid)))
      AND lot.created_at <= ${to}::timestamptz
      AND (lot.on_hand_quantity > 0 OR EXISTS (SELECT 1 FROM movement
        WHERE movement.lot_id = lot.id AND movement.at >= ${from}::timestamptz))
    ORDER BY lot.code`;
  return rows.map((row) => row.id);
};

export const scanContext = async (tx: Tx, now: string): Promise<ScanContext> => {
  const workshop = await tx.workshop.findUnique({ where: { id: 1 } });
  return {
    today: Temporal.Instant.from(now)
      .toZonedDateTimeISO(workshop?.timeZone ?? 'UTC')
      .toPlainDate(),
    lotPattern: workshop?.codePattern ?? DEFAULT_LOT_PATTERN,
    gs1CompanyPrefix: workshop?.gs1CompanyPrefix ?? undefined,
  };
};
