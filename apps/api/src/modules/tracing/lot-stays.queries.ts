import { Prisma } from '../../generated/prisma/client';

/**
 * Where each lot stood and when, as CTEs: `stays (lot_id, place_id, came_at, left_at)`. A lot that
 * was never moved has one stay; `left_at` is null where it still is. The journal keeps the moves.
 */
export const LOT_STAYS = Prisma.sql`
moves AS (
  SELECT lot.id AS lot_id, lot.created_at, entry.at, lead(entry.at) OVER mine AS left_at,
    row_number() OVER mine AS n, (entry.detail ->> 'toId')::uuid AS to_id,
    coalesce((entry.detail ->> 'fromId')::uuid,
      (SELECT id FROM place WHERE name = entry.detail ->> 'from')) AS from_id
  FROM journal_entry entry JOIN lot ON lot.code = entry.subject_id
  WHERE entry.subject_kind = 'lot' AND entry.action = 'lot.moved'
  WINDOW mine AS (PARTITION BY lot.id ORDER BY entry.at, entry.id)),
stays AS (
  SELECT id AS lot_id, place_id, created_at AS came_at, NULL::timestamptz AS left_at FROM lot
  WHERE NOT EXISTS (SELECT 1 FROM moves WHERE moves.lot_id = lot.id)
  UNION ALL SELECT lot_id, from_id, created_at, at FROM moves WHERE n = 1
  UNION ALL SELECT lot_id, to_id, at, left_at FROM moves)`;
