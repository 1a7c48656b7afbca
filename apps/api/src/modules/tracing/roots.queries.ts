import { Temporal } from 'temporal-polyfill';
import type { Prisma } from '../../generated/prisma/client';
import { DEFAULT_LOT_PATTERN, type ScanContext } from '../../domain/identification';
import type { MouldInspection } from '../../domain/mould-scope';
import type { Tx } from '../../platform/database/prisma';
import { momentInWords } from '../../domain/words/moment-in-words';
import type { Sentence } from '../../domain/words/say';

const idsOf = async (tx: Tx, where: Prisma.LotWhereInput): Promise<string[]> => {
  const lots = await tx.lot.findMany({
    // What was taken back never was; looked for by its own code it is found still.
    where: { AND: [where, { takenBackAt: null }] },
    select: { id: true },
    orderBy: { code: 'asc' },
  });
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

/** A code that has no form of ours: a supplier's lot as typed, or a code of an older pattern. */
export const byAnyCode = (tx: Tx, text: string): Promise<string[]> => {
  const code = text.trim();
  return idsOf(tx, {
    OR: [
      { code },
      { deliveryLine: { supplierLotCode: code } },
      { batch: { code } },
      { dispatchLines: { some: { dispatch: { code } } } },
    ],
  });
};

export const mouldWithHistory = (tx: Tx, tag: string) =>
  tx.mould.findUnique({
    where: { tag },
    include: {
      inspections: true,
      uses: { where: { withdrawal: null }, select: { at: true, batchId: true } },
    },
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

/** Moments are said in the workshop's own time, to the minute. */
export const momentsOf = async (tx: Tx): Promise<(instant: string) => Sentence> => {
  const workshop = await tx.workshop.findUnique({ where: { id: 1 } });
  return (instant) => momentInWords(instant, workshop?.timeZone ?? 'UTC');
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
