import type { Tx } from '../../platform/database/prisma';

/** True when a lot was made with what a batch gave, however far on. Visits each lot once. */
export const isAhead = async (tx: Tx, batchId: string, lotCode: string): Promise<boolean> => {
  const rows = await tx.$queryRaw<{ found: boolean }[]>`
    WITH RECURSIVE ahead AS (
      SELECT id FROM lot WHERE batch_id = ${batchId}::uuid
      UNION
      SELECT made.id FROM ahead JOIN draw ON draw.lot_id = ahead.id
        JOIN lot AS made ON made.batch_id = draw.batch_id
      WHERE draw.reverses_id IS NULL
        AND NOT EXISTS (SELECT 1 FROM draw AS back WHERE back.reverses_id = draw.id)
    )
    SELECT EXISTS (SELECT 1 FROM ahead JOIN lot ON lot.id = ahead.id
      WHERE lot.code = ${lotCode}) AS found`;
  return rows[0]?.found === true;
};

export interface DatedAhead {
  readonly id: string;
  readonly code: string;
}

/** Lots made from a lot, at any distance, along items whose own date caps what is made of them. */
export const lotsCappedBy = (tx: Tx, lotIds: readonly string[]): Promise<DatedAhead[]> =>
  tx.$queryRaw<DatedAhead[]>`
    WITH RECURSIVE ahead AS (
      SELECT id FROM lot WHERE id = ANY(${[...lotIds]}::uuid[])
      UNION
      SELECT made.id FROM ahead JOIN lot ON lot.id = ahead.id
        JOIN item ON item.id = lot.item_id AND item.caps_date
        JOIN draw ON draw.lot_id = ahead.id JOIN lot AS made ON made.batch_id = draw.batch_id
      WHERE draw.reverses_id IS NULL
        AND NOT EXISTS (SELECT 1 FROM draw AS back WHERE back.reverses_id = draw.id)
    )
    SELECT lot.id, lot.code FROM ahead JOIN lot ON lot.id = ahead.id`;
