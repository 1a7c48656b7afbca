import { Prisma } from '../../generated/prisma/client';

/**
 * What a person wants to read beside the graph: names, origins, ends, holds and readings that were
 * outside their limits. Members of the row that `subgraphQuery` builds; numbers as there.
 */
export const SUBGRAPH_DETAILS = Prisma.sql`,
  'items', (SELECT json_object_agg(item.id, json_build_array(item.name, item.kind, item.unit))
    FROM item WHERE item.id IN (SELECT lot.item_id FROM numbered JOIN lot ON lot.id = numbered.id)),
  'people', (SELECT json_object_agg(id, name) FROM app_user),
  'places', (SELECT json_object_agg(id, name) FROM place),
  'tanks', (SELECT json_object_agg(id, name) FROM tank),
  'received', (SELECT json_agg(json_build_array(numbered.n, supplier.name, line.supplier_lot_code,
      delivery.reference, delivery.received_on))
    FROM numbered JOIN lot ON lot.id = numbered.id
    JOIN delivery_line line ON line.id = lot.delivery_line_id
    JOIN delivery ON delivery.id = line.delivery_id
    JOIN supplier ON supplier.id = delivery.supplier_id),
  'dispatched', (SELECT json_agg(json_build_array(numbered.n, dispatch.code, customer.id,
      customer.name, dispatch.sent_on, line.quantity::text, (line.mass_g * 1000)::bigint,
      back.quantity::text, (back.mass_g * 1000)::bigint)
      ORDER BY dispatch.sent_on, dispatch.code, line.position)
    FROM numbered JOIN dispatch_line line ON line.lot_id = numbered.id AND numbered.is_ahead
    JOIN dispatch ON dispatch.id = line.dispatch_id
    CROSS JOIN LATERAL (SELECT coalesce(sum(quantity), 0) AS quantity,
      coalesce(sum(mass_g), 0) AS mass_g FROM movement
      WHERE dispatch_line_id = line.id AND kind = 'returned') back
    LEFT JOIN customer ON customer.id = dispatch.customer_id),
  'moves', (SELECT json_agg(json_build_array(n, kind, quantity::text, mg)) FROM (
      SELECT numbered.n, movement.kind, sum(movement.quantity) AS quantity,
        (sum(movement.mass_g) * 1000)::bigint AS mg
      FROM numbered JOIN movement ON movement.lot_id = numbered.id AND numbered.is_ahead
        AND movement.kind IN ('wasted', 'counted', 'sampled', 'returned')
      GROUP BY numbered.n, movement.kind,
        sign(movement.quantity) * CASE WHEN movement.reverses_id IS NULL THEN 1 ELSE -1 END
      HAVING sum(movement.quantity) <> 0) moved),
  'held', (SELECT json_agg(DISTINCT numbered.n) FROM numbered
    JOIN hold ON hold.lot_id = numbered.id AND hold.released_at IS NULL),
  'readings', (SELECT json_agg(json_build_array(making.n, numbered.n, reading.measure,
      reading.value::text, reading.verdict, reading.at, reading.user_id, reading.corrective_action,
      reading.id)
      ORDER BY reading.at)
    FROM (SELECT reading.* FROM making JOIN reading ON reading.batch_id = making.id
        WHERE reading.verdict IN ('low', 'high')
      UNION SELECT reading.* FROM numbered JOIN reading ON reading.lot_id = numbered.id
        WHERE reading.verdict IN ('low', 'high')) reading
    LEFT JOIN making ON making.id = reading.batch_id
    LEFT JOIN numbered ON numbered.id = reading.lot_id
    WHERE NOT EXISTS (SELECT 1 FROM reading undone WHERE undone.reverses_id = reading.id))`;
