import { Prisma } from '../../generated/prisma/client';

/** A draw that stands: neither a reversal nor reversed. */
const STANDS = Prisma.sql`draw.reverses_id IS NULL
  AND NOT EXISTS (SELECT 1 FROM draw undone WHERE undone.reverses_id = draw.id)`;

const NOT_CLEANED_BETWEEN = Prisma.sql`NOT EXISTS (SELECT 1 FROM tank_emptying e
  WHERE e.tank_id = early.tank_id AND e.cleaned
    AND e.at >= early.ended_at AND e.at <= late.ended_at)`;

const CHARGE_BEFORE = Prisma.sql`SELECT id, tank_id, ended_at FROM batch
  WHERE tank_id = late.tank_id AND state = 'finished' AND ended_at < late.ended_at
  ORDER BY ended_at DESC LIMIT 1`;

/**
 * The step back: what was drawn to make a lot, and for a tank's lot also the lot that stood in the
 * tank before it, unless the tank was recorded clean in between: scales that showed no heel don't
 * make a tank clean.
 */
const STEP_BACK = Prisma.sql`
  SELECT source.id, source.batch_id FROM behind
  CROSS JOIN LATERAL (
    SELECT draw.lot_id FROM draw WHERE draw.batch_id = behind.batch_id AND ${STANDS}
    UNION ALL
    SELECT heel.id FROM batch late
    CROSS JOIN LATERAL (${CHARGE_BEFORE}) early
    JOIN lot heel ON heel.batch_id = early.id
    WHERE late.id = behind.batch_id AND late.tank_id IS NOT NULL AND ${NOT_CLEANED_BETWEEN}
  ) drawn
  JOIN lot source ON source.id = drawn.lot_id`;

/** The step ahead: what was made from a lot, and the tank's next lot under the same rule. */
const STEP_AHEAD = Prisma.sql`
  SELECT made.id, made.batch_id FROM ahead
  CROSS JOIN LATERAL (
    SELECT draw.batch_id FROM draw WHERE draw.lot_id = ahead.id AND ${STANDS}
    UNION ALL
    SELECT late.id FROM batch early
    CROSS JOIN LATERAL (
      SELECT id, tank_id, ended_at FROM batch
      WHERE tank_id = early.tank_id AND state = 'finished' AND ended_at > early.ended_at
      ORDER BY ended_at LIMIT 1) late
    WHERE early.id = ahead.batch_id AND early.tank_id IS NOT NULL AND ${NOT_CLEANED_BETWEEN}
  ) used
  JOIN lot made ON made.batch_id = used.batch_id AND made.taken_back_at IS NULL`;

/** Ids of lots, or the code of one: then finding it and walking from it are one statement. */
export type From = readonly string[] | { readonly code: string };

const isOf = (from: From): Prisma.Sql =>
  'code' in from ? Prisma.sql`code = ${from.code}` : Prisma.sql`id = ANY(${[...from]}::uuid[])`;

const walk = (name: 'behind' | 'ahead', from: From, walks: boolean): Prisma.Sql => {
  const cte = Prisma.raw(name);
  const start = Prisma.sql`SELECT id, batch_id FROM lot WHERE ${isOf(from)}`;
  if (!walks) return Prisma.sql`${cte} AS (${start})`;
  return Prisma.sql`${cte} AS (${start} UNION ${name === 'behind' ? STEP_BACK : STEP_AHEAD})`;
};

export type Direction = 'back' | 'forward' | 'both';

/**
 * Every lot behind or ahead of some lots, each visited once (UNION), with the batches between, as
 * one row of JSON text: lots are numbered, and draws and losses name them by number, so that a
 * graph of ten thousand lots stays small on the way. Weights are whole milligrams.
 *
 * `details` adds further members, each with its comma; it may read `numbered` and `making`.
 *
 * A batch that is only ahead may have drawn lots that are in no direction: their draws come as one
 * sum per batch under no number, which is all that the shares need.
 */
export const subgraphQuery = (
  from: From,
  direction: Direction,
  details: Prisma.Sql = Prisma.empty,
): Prisma.Sql =>
  Prisma.sql`
WITH RECURSIVE
${walk('behind', from, direction !== 'forward')},
${walk('ahead', from, direction !== 'back')},
numbered AS MATERIALIZED (
  SELECT id, batch_id, (row_number() OVER () - 1)::int AS n,
    bool_or(is_behind) AS is_behind, bool_or(is_ahead) AS is_ahead
  FROM (SELECT id, batch_id, true AS is_behind, false AS is_ahead FROM behind
    UNION ALL SELECT id, batch_id, false, true FROM ahead) sides
  GROUP BY id, batch_id),
making AS MATERIALIZED (
  SELECT batch_id AS id, (row_number() OVER () - 1)::int AS n
  FROM (SELECT batch_id FROM numbered WHERE batch_id IS NOT NULL
    UNION SELECT draw.batch_id FROM numbered JOIN draw ON draw.lot_id = numbered.id
      WHERE numbered.is_ahead) touched)
SELECT json_build_object(
  'lots', (SELECT json_agg(json_build_array(lot.id, lot.code, lot.item_id, making.n,
      CASE WHEN lot.taken_back_at IS NULL THEN (lot.made_mass_g * 1000)::bigint ELSE 0 END,
      CASE WHEN lot.taken_back_at IS NULL THEN lot.made_quantity ELSE 0 END::text,
      lot.on_hand_quantity::text,
      (lot.on_hand_mass_g * 1000)::bigint, lot.made_on, lot.best_before, lot.use_by, lot.place_id,
      (numbered.is_behind::int + 2 * numbered.is_ahead::int), lot.delivery_line_id, lot.refused)
      ORDER BY numbered.n)
    FROM numbered JOIN lot ON lot.id = numbered.id LEFT JOIN making ON making.id = lot.batch_id),
  'batches', (SELECT json_agg(json_build_array(batch.id, batch.code, batch.kind, batch.state,
      batch.opened_at, batch.ended_at, batch.operator_id, batch.tank_id, batch.place_id,
      batch.recipe_version_id) ORDER BY making.n)
    FROM making JOIN batch ON batch.id = making.id),
  'draws', (SELECT json_agg(json_build_array(n, lot_n, mg, quantity)) FROM (
      SELECT making.n, numbered.n AS lot_n, (sum(draw.mass_g) * 1000)::bigint AS mg,
        CASE WHEN numbered.n IS NULL THEN NULL ELSE sum(draw.quantity)::text END AS quantity
      FROM making JOIN draw ON draw.batch_id = making.id
      LEFT JOIN numbered ON numbered.id = draw.lot_id
      GROUP BY making.n, numbered.n
      HAVING sum(draw.quantity) > 0) drawn),
  'losses', (SELECT json_agg(json_build_array(n, lot_n, of_lot, kind, mg)) FROM (
      SELECT making.n, numbered.n AS lot_n, loss.lot_id IS NOT NULL AS of_lot, loss.kind,
        (sum(loss.mass_g) * 1000)::bigint AS mg
      FROM making JOIN batch_loss loss ON loss.batch_id = making.id
      LEFT JOIN numbered ON numbered.id = loss.lot_id
      GROUP BY 1, 2, 3, 4
      HAVING sum(loss.mass_g) > 0) lost),
  'heels', (SELECT json_agg(json_build_array(making.n, numbered.n))
    FROM making JOIN batch late ON late.id = making.id AND late.tank_id IS NOT NULL
    CROSS JOIN LATERAL (${CHARGE_BEFORE}) early
    JOIN lot heel ON heel.batch_id = early.id JOIN numbered ON numbered.id = heel.id
    WHERE ${NOT_CLEANED_BETWEEN})
  ${details}
)::text AS subgraph`;
