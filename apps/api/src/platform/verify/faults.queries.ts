import { sealed } from './sealed.queries';
import type { Rule } from './rule';

const ledger: Rule[] = [
  {
    name: 'ledger',
    meaning: 'What is on hand of a lot is the sum of its movements.',
    sql: `SELECT lot.code AS subject, format('on hand %s (%s g, cost %s), movements %s (%s g, cost %s)',
        lot.on_hand_quantity, lot.on_hand_mass_g, lot.on_hand_cost, m.quantity, m.mass_g, m.cost) AS detail
      FROM lot LEFT JOIN LATERAL (SELECT coalesce(sum(quantity), 0) AS quantity,
        coalesce(sum(mass_g), 0) AS mass_g, coalesce(sum(cost), 0) AS cost
        FROM movement WHERE lot_id = lot.id) m ON true
      WHERE (lot.on_hand_quantity, lot.on_hand_mass_g, lot.on_hand_cost)
        IS DISTINCT FROM (m.quantity, m.mass_g, m.cost)`,
  },
  {
    name: 'below-nought',
    meaning: 'No lot ever holds less than nothing.',
    sql: `SELECT code AS subject, format('on hand %s (%s g)', on_hand_quantity, on_hand_mass_g) AS detail
      FROM lot WHERE on_hand_quantity < 0 OR on_hand_mass_g < 0 OR on_hand_cost < 0`,
  },
  {
    name: 'origin',
    meaning: 'A lot came in by one movement of what was made or received.',
    sql: `SELECT lot.code AS subject, format('made %s, movements of origin %s',
        lot.made_quantity, m.quantity) AS detail
      FROM lot CROSS JOIN LATERAL (SELECT coalesce(sum(quantity), 0) AS quantity FROM movement
        WHERE lot_id = lot.id AND kind IN ('received', 'made')) m
      WHERE m.quantity <> CASE WHEN lot.taken_back_at IS NULL THEN lot.made_quantity ELSE 0 END`,
  },
  {
    name: 'taken-back',
    meaning: 'A lot that was taken back is in nothing, and nothing of it is left.',
    sql: `SELECT lot.code AS subject, format('on hand %s, drawn %s', lot.on_hand_quantity, d.quantity)
        AS detail
      FROM lot CROSS JOIN LATERAL (SELECT coalesce(sum(quantity), 0) AS quantity FROM draw
        WHERE lot_id = lot.id) d
      WHERE lot.taken_back_at IS NOT NULL AND (lot.on_hand_quantity <> 0 OR d.quantity <> 0)`,
  },
  {
    name: 'draw-moves',
    meaning: 'Each draw has its movement, and each movement of a draw its draw.',
    sql: `SELECT coalesce(draw.id, movement.draw_id, movement.id)::text AS subject,
        format('draw %s, movement %s', draw.quantity, movement.quantity) AS detail
      FROM draw FULL JOIN (SELECT * FROM movement WHERE kind = 'drawn') movement
        ON movement.draw_id = draw.id
      WHERE (draw.lot_id, draw.quantity, draw.mass_g)
        IS DISTINCT FROM (movement.lot_id, -movement.quantity, -movement.mass_g)`,
  },
  {
    name: 'dispatch-moves',
    meaning: 'Each dispatched line has its movement.',
    sql: `SELECT coalesce(line.id, movement.id)::text AS subject,
        format('line %s, movement %s', line.quantity, movement.quantity) AS detail
      FROM dispatch_line line FULL JOIN (SELECT * FROM movement WHERE kind = 'dispatched') movement
        ON movement.dispatch_line_id = line.id
      WHERE (line.lot_id, line.quantity, line.mass_g)
        IS DISTINCT FROM (movement.lot_id, -movement.quantity, -movement.mass_g)`,
  },
  {
    name: 'reversal',
    meaning: 'An opposite entry is the exact opposite of the one that it names.',
    sql: `SELECT back.id::text AS subject, format('draw %s against %s', back.quantity, first.quantity) AS detail
      FROM draw back JOIN draw first ON first.id = back.reverses_id
      WHERE (back.batch_id, back.lot_id, back.quantity, back.mass_g)
        IS DISTINCT FROM (first.batch_id, first.lot_id, -first.quantity, -first.mass_g)
      UNION ALL SELECT back.id::text, format('movement %s against %s', back.quantity, first.quantity)
      FROM movement back JOIN movement first ON first.id = back.reverses_id
      WHERE (back.lot_id, back.quantity, back.mass_g)
        IS DISTINCT FROM (first.lot_id, -first.quantity, -first.mass_g)
      UNION ALL SELECT back.id::text, format('loss %s g against %s g', back.mass_g, first.mass_g)
      FROM batch_loss back JOIN batch_loss first ON first.id = back.reverses_id
      WHERE (back.batch_id, back.kind, back.mass_g)
        IS DISTINCT FROM (first.batch_id, first.kind, -first.mass_g)`,
  },
];

const batches: Rule[] = [
  {
    name: 'batch-balance',
    meaning: 'What was drawn into a closed batch is what was made and lost, to the milligram.',
    sql: `SELECT batch.code AS subject, format('%s g drawn, %s g made, %s g lost', d.g, m.g, l.g) AS detail
      FROM batch
      CROSS JOIN LATERAL (SELECT coalesce(sum(mass_g), 0) AS g FROM draw WHERE batch_id = batch.id) d
      CROSS JOIN LATERAL (SELECT coalesce(sum(made_mass_g), 0) AS g FROM lot
        WHERE batch_id = batch.id AND taken_back_at IS NULL) m
      CROSS JOIN LATERAL (SELECT coalesce(sum(mass_g), 0) AS g FROM batch_loss WHERE batch_id = batch.id) l
      WHERE batch.state <> 'open' AND d.g <> m.g + l.g
        AND (d.g > m.g + l.g OR batch.imbalance_reason IS NULL)`,
  },
  {
    name: 'parts',
    meaning:
      'A part is of the recipe version of its head, was opened before its end, and has none.',
    sql: `SELECT part.code AS subject, format('part of %s', coalesce(head.code, '?')) AS detail
      FROM batch part LEFT JOIN batch head ON head.id = part.part_of_id
      WHERE part.part_of_id IS NOT NULL AND (head.id IS NULL OR head.part_of_id IS NOT NULL
        OR (head.kind, head.recipe_version_id)
          IS DISTINCT FROM (part.kind, part.recipe_version_id)
        OR head.ended_at < part.opened_at)`,
  },
  {
    name: 'tank-lot',
    meaning: 'The lot in a tank was made by a charge of that tank.',
    sql: `SELECT tank.name AS subject, format('holds lot %s', coalesce(lot.code, '?')) AS detail
      FROM tank LEFT JOIN lot ON lot.id = tank.current_lot_id
      LEFT JOIN batch ON batch.id = lot.batch_id
      WHERE tank.current_lot_id IS NOT NULL AND batch.tank_id IS DISTINCT FROM tank.id`,
  },
];

export const RULES: readonly Rule[] = [...ledger, ...batches, ...sealed];
