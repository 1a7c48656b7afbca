import { randomUUID } from 'node:crypto';
import { Client as PgClient } from 'pg';
import type { TestService } from '../service/test-service';

interface Named {
  readonly id: string;
  readonly name: string;
  readonly version: number;
}

export const addSupplier = async (
  service: TestService,
  name = 'Valley Dairy Invented',
): Promise<Named> =>
  (await service.as.maker.post('/suppliers', { name }).expect(201)).body as Named;

export const addItem = async (
  service: TestService,
  item: { name: string; kind: string } & Record<string, unknown>,
): Promise<Named> => (await service.as.maker.post('/items', item).expect(201)).body as Named;

/**
 * An approved specification straight in the database, for tests that are not about specifications.
 * @param allergens presence by allergen code
 */
export const addSpecification = async (
  service: TestService,
  itemId: string,
  supplierId: string,
  allergens: Readonly<Record<string, string>> = {},
): Promise<string> => {
  const client = new PgClient({ connectionString: service.databaseUrl });
  await client.connect();
  const id = randomUUID();
  try {
    const number = await client.query<{ next: number }>(
      `SELECT coalesce(max(number), 0) + 1 AS next FROM specification
       WHERE item_id = $1 AND supplier_id = $2`,
      [itemId, supplierId],
    );
    await client.query(
      `INSERT INTO specification (id, item_id, supplier_id, number, state, label_names, ingredients,
         composition, nutrition) VALUES ($1, $2, $3, $4, 'draft', '{}', '{}', '{}', '{}')`,
      [id, itemId, supplierId, number.rows[0]?.next ?? 1],
    );
    for (const [allergen, presence] of Object.entries(allergens)) {
      await client.query('INSERT INTO specification_allergen VALUES ($1, $2, $3)', [
        id,
        allergen,
        presence,
      ]);
    }
    await client.query(
      `UPDATE specification SET state = 'approved', approved_at = now(),
         approved_by_id = (SELECT id FROM app_user WHERE role = 'owner' LIMIT 1) WHERE id = $1`,
      [id],
    );
  } finally {
    await client.end();
  }
  return id;
};

export interface ReceivedLine {
  readonly lotCode: string;
  readonly heldBecause: string | null;
}

/** Takes one line of goods in and returns it with its lot's code. */
export const receive = async (
  service: TestService,
  supplierId: string,
  line: { itemId: string; quantity: string } & Record<string, unknown>,
): Promise<ReceivedLine> => {
  const answer = await service.as.maker
    .post('/deliveries', {
      supplierId,
      lines: [{ supplierLotCode: 'S-1', price: '10.00', ...line }],
    })
    .expect(201);
  const [received] = (answer.body as { lines: ReceivedLine[] }).lines;
  if (received === undefined) throw new Error('a delivery without lines');
  return received;
};
