import type { PartOfMaking } from '../../domain/making';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';

/** The head of a making, or a part of it, as it stands. */
export interface StoredPart extends PartOfMaking {
  readonly id: string;
  readonly code: string;
  /** What head and parts were to make together; only the head knows. */
  readonly whole: Decimal | null;
  readonly held: boolean;
}

interface Row {
  readonly id: string;
  readonly code: string;
  readonly state: PartOfMaking['state'];
  readonly planned: string | null;
  readonly whole: string | null;
  readonly made: string;
  readonly held: boolean;
}

const decimal = (text: string | null): Decimal | null => (text === null ? null : new Decimal(text));

/** A head and its parts in the order in which they were opened; a batch alone is the only one. */
export const loadParts = async (tx: Tx, headId: string): Promise<StoredPart[]> => {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT batch.id, batch.code, batch.state, batch.plan ->> 'quantity' AS planned,
      batch.plan ->> 'whole' AS whole,
      (SELECT coalesce(sum(made_quantity), 0)::text FROM lot WHERE lot.batch_id = batch.id
        AND output_role = 'product' AND taken_back_at IS NULL) AS made,
      EXISTS (SELECT 1 FROM lot JOIN hold ON hold.lot_id = lot.id AND released_at IS NULL
        WHERE lot.batch_id = batch.id AND taken_back_at IS NULL) AS held
    FROM batch WHERE batch.id = ${headId}::uuid OR batch.part_of_id = ${headId}::uuid
    ORDER BY batch.part_of_id NULLS FIRST, batch.opened_at, batch.id`;
  return rows.map((row) => ({
    ...row,
    planned: decimal(row.planned),
    whole: decimal(row.whole),
    made: new Decimal(row.made),
  }));
};

/** Which of the parts of its making a batch is, from 1, and how many there are. */
export interface PlaceInMaking {
  readonly number: number;
  readonly count: number;
}

/** Of a batch among head and parts as they were opened; none for a batch that is made in one. */
export const placeAmong = (parts: readonly StoredPart[], id: string): PlaceInMaking | undefined =>
  parts.length > 1
    ? { number: parts.findIndex((part) => part.id === id) + 1, count: parts.length }
    : undefined;

interface PlaceRow extends PlaceInMaking {
  readonly id: string;
}

/** Places of the batches that are made in parts; those that are made in one aren't among them. */
export const findPlacesInMakings = async (
  tx: Tx,
  batches: readonly { readonly id: string; readonly partOfId: string | null }[],
): Promise<ReadonlyMap<string, PlaceInMaking>> => {
  const heads = [...new Set(batches.map(({ id, partOfId }) => partOfId ?? id))];
  const rows = await tx.$queryRaw<PlaceRow[]>`
    SELECT * FROM (
      SELECT id, (row_number() OVER making)::int AS number,
        (count(*) OVER (PARTITION BY coalesce(part_of_id, id)))::int AS count
      FROM batch WHERE id = ANY(${heads}::uuid[]) OR part_of_id = ANY(${heads}::uuid[])
      WINDOW making AS (PARTITION BY coalesce(part_of_id, id)
        ORDER BY part_of_id NULLS FIRST, opened_at, id)) placed
    WHERE count > 1`;
  return new Map(rows.map(({ id, ...place }) => [id, place]));
};
