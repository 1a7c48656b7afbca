import { Client } from 'pg';

export interface ShopSize {
  readonly lots: number;
  readonly draws: number;
}

/** Parts of all lots by layer: received, fillings, pieces, boxes; and parts of all draws into them. */
const LAYERS = [
  { kind: 'ingredient', unit: 'g', lots: 0.2, draws: 0 },
  { kind: 'filling', unit: 'g', lots: 0.15, draws: 0.24 },
  { kind: 'piece', unit: 'pc', lots: 0.25, draws: 0.26 },
  { kind: 'box', unit: 'pc', lots: 0.4, draws: 0.5 },
] as const;

const BATCH_KIND = ['', 'cook', 'cast', 'pack'] as const;

/**
 * Fills a migrated database with a shop of so many lots and draws, in order of time: fillings from
 * received lots, pieces from fillings and chocolate, boxes from pieces, each from lots made shortly
 * before, some of them far oftener than others. Written past the triggers, for speed.
 */
export const generateShop = async (databaseUrl: string, size: ShopSize): Promise<void> => {
  const client = new Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await fill((sql) => client.query(sql), size);
  } finally {
    await client.end();
  }
};

type Run = (sql: string) => Promise<unknown>;

const fill = async (run: Run, size: ShopSize): Promise<void> => {
  await run('SET session_replication_role = replica');
  await run('SELECT setseed(0.42)');
  await run(`INSERT INTO app_user (id, name, role, password_hash)
    VALUES (md5('user')::uuid, 'A generated maker', 'maker', '-')`);
  await run(`INSERT INTO supplier (id, name) SELECT md5('s' || i)::uuid, 'Supplier ' || i
    FROM generate_series(1, 6) i`);
  await run(`INSERT INTO customer (id, name) SELECT md5('c' || i)::uuid, 'Customer ' || i
    FROM generate_series(1, 80) i`);
  await run(`INSERT INTO place (id, name, kind, tag) SELECT md5('p' || i)::uuid, 'Store ' || i,
    'store', 'tag ' || i FROM generate_series(1, 4) i`);
  for (const { kind, unit } of LAYERS) {
    await run(`INSERT INTO item (id, name, kind, unit) SELECT md5('${kind}' || i)::uuid,
      '${kind} ' || i, '${kind}', '${unit}' FROM generate_series(1, 30) i`);
  }
  await run('CREATE TEMP TABLE made (layer int, k int, source text, mg bigint)');
  for (const [layer, { lots, draws }] of LAYERS.entries()) {
    if (layer > 0) await makeDraws(run, layer, size.lots * lots, size.draws * draws, size);
  }
  for (const [layer, { kind, unit, lots }] of LAYERS.entries()) {
    await insertLots(run, layer, { kind, unit, count: Math.round(size.lots * lots) });
  }
  await run(`INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, at, user_id)
    SELECT gen_random_uuid(), md5('batch' || layer || '-' || k)::uuid, md5('lot' || source)::uuid,
      'base', mg / 1000.0, mg / 1000.0, 0, '2020-01-01'::timestamptz + k * interval '1 minute',
      md5('user')::uuid FROM (SELECT layer, k, source, sum(mg) AS mg FROM made GROUP BY 1, 2, 3) m`);
  await run(`INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, batch_id, draw_id, at, user_id)
    SELECT gen_random_uuid(), lot_id, -quantity, -mass_g, 0, 'drawn', batch_id, id, at, user_id FROM draw`);
  await run(`INSERT INTO dispatch (id, code, customer_id, sent_on, at, user_id)
    SELECT md5('d' || i)::uuid, 'D' || i, CASE WHEN i % 3 > 0 THEN md5('c' || 1 + i % 80)::uuid END,
      '2021-01-01', '2021-01-01', md5('user')::uuid FROM generate_series(1, 5000) i`);
  await run(`INSERT INTO dispatch_line (id, dispatch_id, position, lot_id, quantity, mass_g, cost)
    SELECT gen_random_uuid(), md5('d' || 1 + n % 5000)::uuid, n, id, 6, 120, 0
    FROM (SELECT id, row_number() OVER ()::int AS n FROM lot WHERE code LIKE 'X3-%') boxes`);
  await run('ANALYZE');
};

/** Sources lie shortly before in time; the square makes a few of them much used. */
const makeDraws = async (
  run: Run,
  layer: number,
  lots: number,
  draws: number,
  size: ShopSize,
): Promise<void> => {
  const from = layer === 3 ? 2 : layer - 1;
  const sources = Math.round(size.lots * (LAYERS[from]?.lots ?? 0));
  await run(`INSERT INTO made SELECT ${String(layer)}, k,
      '${String(from)}-' || greatest(1, least(${String(sources)},
        (k * ${String(sources / lots)})::int - (random() * random() * 60)::int)),
      50000 + (random() * 100000)::bigint
    FROM (SELECT 1 + (i % ${String(Math.round(lots))}) AS k
      FROM generate_series(1, ${String(Math.round(draws))}) i) d`);
};

const insertLots = async (
  run: Run,
  layer: number,
  { kind, unit, count }: { kind: string; unit: string; count: number },
): Promise<void> => {
  const at = `'2020-01-01'::timestamptz + k * interval '1 minute'`;
  if (layer === 0) {
    await run(`INSERT INTO delivery (id, supplier_id, received_on, received_at, user_id)
      SELECT md5('delivery' || k)::uuid, md5('s' || 1 + k % 6)::uuid, '2020-01-01', ${at},
        md5('user')::uuid FROM generate_series(1, ${String(count)}) k`);
    await run(`INSERT INTO delivery_line (id, delivery_id, position, item_id, supplier_lot_code,
        quantity, price, accepted)
      SELECT md5('line' || k)::uuid, md5('delivery' || k)::uuid, 1, md5('${kind}' || 1 + k % 30)::uuid,
        'S' || k, 5000, 10, true FROM generate_series(1, ${String(count)}) k`);
  } else {
    await run(`INSERT INTO batch (id, code, kind, recipe_version_id, state, operator_id, opened_at, ended_at)
      SELECT md5('batch${String(layer)}-' || k)::uuid, 'B${String(layer)}-' || k,
        '${BATCH_KIND[layer] ?? ''}', md5('version')::uuid, 'finished', md5('user')::uuid, ${at}, ${at}
      FROM generate_series(1, ${String(count)}) k`);
  }
  await run(`INSERT INTO lot (id, code, item_id, unit, delivery_line_id, batch_id, output_role,
      made_quantity, made_mass_g, made_cost, on_hand_quantity, on_hand_mass_g, best_before, made_on,
      place_id, created_at, user_id)
    SELECT md5('lot${String(layer)}-' || k)::uuid, 'X${String(layer)}-' || k,
      md5('${kind}' || 1 + k % 30)::uuid, '${unit}',
      ${layer === 0 ? `md5('line' || k)::uuid, NULL, NULL` : `NULL, md5('batch${String(layer)}-' || k)::uuid, 'product'`},
      ${unit === 'g' ? 'coalesce(m.mg, 5000000) / 1000.0' : '24'}, coalesce(m.mg, 5000000) / 1000.0, 0, 0, 0,
      '2030-01-01', '2020-01-01', md5('p' || 1 + k % 4)::uuid, ${at}, md5('user')::uuid
    FROM generate_series(1, ${String(count)}) k
    LEFT JOIN (SELECT k AS batch, sum(mg) AS mg FROM made WHERE layer = ${String(layer)} GROUP BY k) m
      ON m.batch = k`);
  await run(`INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, batch_id, delivery_line_id, at, user_id)
    SELECT gen_random_uuid(), id, made_quantity, made_mass_g, 0,
      CASE WHEN batch_id IS NULL THEN 'received' ELSE 'made' END, batch_id, delivery_line_id,
      created_at, user_id FROM lot WHERE code LIKE 'X${String(layer)}-%'`);
};
