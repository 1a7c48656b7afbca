import { verifyDatabase } from '@api/platform/verify';
import { Client } from 'pg';
import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { createTestDatabase, type TestDatabase } from '../../support/database/test-database';

describe('verify', () => {
  let database: TestDatabase;
  let books: Books;
  let intruder: Client;

  /** Past every trigger, as somebody with the server's own password could. */
  const plant = async (sql: string): Promise<void> => {
    await intruder.query(sql);
  };

  const faults = async (): Promise<string[]> => {
    const found = await verifyDatabase(database.url);
    return [...new Set(found.map((fault) => `${fault.rule} ${fault.subject}`))];
  };

  beforeAll(async () => {
    database = await createTestDatabase();
    books = await Books.open(database.url);
    await smallShop(books);
    // The books here are written without the service, so their journal is written here as well.
    await books.query(`
      INSERT INTO journal_entry (at, user_id, user_name, action, subject_kind, subject_id)
      SELECT DISTINCT at, user_id, 'A maker', 'booked', 'test', 'test' FROM movement`);
    intruder = new Client({ connectionString: database.url });
    await intruder.connect();
    await intruder.query('SET session_replication_role = replica');
  });

  afterAll(async () => {
    await intruder.end();
    await books.close();
    await database.drop();
  });

  it('finds nothing in sound books', async () => {
    expect(await faults()).toEqual([]);
  });

  const planted = async (sql: string, undo: string): Promise<string[]> => {
    await plant(sql);
    const found = await faults();
    await plant(undo);
    expect(await faults()).toEqual([]);
    return found;
  };

  const kept = (table: string, where: string, change: string) => ({
    sql: `CREATE TABLE aside AS SELECT * FROM ${table} WHERE ${where}; ${change}`,
    undo: `DELETE FROM ${table} WHERE id IN (SELECT id FROM aside);
      INSERT INTO ${table} SELECT * FROM aside; DROP TABLE aside`,
  });

  it.each<[string, string, string, string, string]>([
    [
      'a lot that holds other than its movements say',
      'lot',
      `code = 'G1'`,
      `UPDATE lot SET on_hand_quantity = on_hand_quantity + 1 WHERE code = 'G1'`,
      'ledger G1',
    ],
    [
      'a lot made without its movement',
      'movement',
      `kind = 'made' AND lot_id = (SELECT id FROM lot WHERE code = 'P1')`,
      `DELETE FROM movement WHERE id IN (SELECT id FROM aside)`,
      'origin P1',
    ],
    [
      'a loss that was taken out of a batch',
      'batch_loss',
      `kind = 'steam'`,
      `DELETE FROM batch_loss WHERE kind = 'steam'`,
      'batch-balance K1',
    ],
    [
      'a tank that claims another lot',
      'tank',
      'true',
      `UPDATE tank SET current_lot_id = (SELECT id FROM lot WHERE code = 'G1')`,
      'tank-lot Tank 1',
    ],
    [
      'a part that is made by another recipe version than its head',
      'batch',
      `code = 'K1'`,
      `UPDATE batch SET part_of_id = (SELECT id FROM batch other WHERE other.code <> 'K1'
         AND other.recipe_version_id IS DISTINCT FROM batch.recipe_version_id LIMIT 1)
       WHERE code = 'K1'`,
      'parts K1',
    ],
  ])('names %s', async (_, table, where, change, expected) => {
    const { sql, undo } = kept(table, where, change);
    expect(await planted(sql, undo)).toContain(expected);
  });

  it('names a draw that was changed, by its id and by what no longer balances', async () => {
    const draw = `batch_id = (SELECT id FROM batch WHERE code = 'K1')
      AND lot_id = (SELECT id FROM lot WHERE code = 'CR1')`;
    const { sql, undo } = kept('draw', draw, `UPDATE draw SET mass_g = mass_g + 1 WHERE ${draw}`);
    const found = await planted(sql, undo);
    expect(found).toContain('batch-balance K1');
    expect(found.some((fault) => fault.startsWith('draw-moves '))).toBe(true);
  });

  it('names a dispatched line that was changed', async () => {
    const line = `lot_id = (SELECT id FROM lot WHERE code = 'P1')`;
    const change = `UPDATE dispatch_line SET quantity = quantity - 1 WHERE ${line}`;
    const { sql, undo } = kept('dispatch_line', line, change);
    const found = await planted(sql, undo);
    expect(found.some((fault) => fault.startsWith('dispatch-moves '))).toBe(true);
  });

  it('names an opposite entry that is not the opposite', async () => {
    const first = `kind = 'sampled'`;
    const { sql, undo } = kept(
      'movement',
      first,
      `INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, reverses_id, at, user_id)
       SELECT '00000000-0000-4000-8000-000000000001', lot_id, 1, 12, 0, kind, id, at, user_id
       FROM movement WHERE ${first}`,
    );
    const found = await planted(
      sql,
      `DELETE FROM movement WHERE id = '00000000-0000-4000-8000-000000000001'; ${undo}`,
    );
    expect(found).toContain('reversal 00000000-0000-4000-8000-000000000001');
  });

  it('names the lots of a circle', async () => {
    const draw = `batch_id = (SELECT id FROM batch WHERE code = 'K1')
      AND lot_id = (SELECT id FROM lot WHERE code = 'CR1')`;
    const change = `UPDATE draw SET lot_id = (SELECT id FROM lot WHERE code = 'P1') WHERE ${draw}`;
    const { sql, undo } = kept('draw', draw, change);
    const found = await planted(sql, undo);
    expect(found.find((fault) => fault.startsWith('lot-is-its-own-ancestor'))).toMatch(/P1/);
  });

  it('names a version in use that was changed, and one that was never frozen', async () => {
    const version = `id = '${books.id('version ganache')}'`;
    const changed = kept(
      'recipe_version',
      version,
      `UPDATE recipe_version SET note = 'x' WHERE ${version}`,
    );
    expect(await planted(changed.sql, changed.undo)).toContain(
      `frozen recipe_version ${books.id('version ganache')}`,
    );
    const thawed = kept(
      'recipe_version',
      version,
      `UPDATE recipe_version SET frozen_at = NULL WHERE ${version}`,
    );
    expect(await planted(thawed.sql, thawed.undo)).toContain(
      `unfrozen recipe_version ${books.id('version ganache')}`,
    );
  });

  it('names an approved specification that was changed', async () => {
    const id = books.id('specification cream Dairy');
    const { sql, undo } = kept(
      'specification',
      `id = '${id}'`,
      `UPDATE specification SET composition = '{"waterG": "1"}' WHERE id = '${id}'`,
    );
    expect(await planted(sql, undo)).toContain(`frozen specification ${id}`);
  });

  it('names bookings whose journal entry is gone', async () => {
    const entry = `at = (SELECT at FROM movement WHERE kind = 'received'
      AND lot_id = (SELECT id FROM lot WHERE code = 'CH2'))`;
    const { sql, undo } = kept('journal_entry', entry, `DELETE FROM journal_entry WHERE ${entry}`);
    const found = await planted(sql, undo);
    expect(found.some((fault) => fault.startsWith('journal movement '))).toBe(true);
  });

  it('names a lot below nought, should even the constraint be gone', async () => {
    const found = await planted(
      `ALTER TABLE lot DROP CONSTRAINT lot_on_hand;
       UPDATE lot SET on_hand_mass_g = on_hand_mass_g - 9000 WHERE code = 'G1'`,
      `UPDATE lot SET on_hand_mass_g = on_hand_mass_g + 9000 WHERE code = 'G1';
       ALTER TABLE lot ADD CONSTRAINT lot_on_hand CHECK (
         on_hand_quantity >= 0 AND on_hand_mass_g >= 0 AND on_hand_cost >= 0)`,
    );
    expect(found).toContain('below-nought G1');
  });

  it('names a printed label whose bytes were changed', async () => {
    const id = '00000000-0000-4000-8000-000000000002';
    const found = await planted(
      `INSERT INTO label_run (id, lot_id, form, market, languages, copies, content, pdf, pdf_sha256, user_id)
       SELECT '${id}', id, 'lot_tag', 'EU', '{en}', 1, '{}', 'other bytes',
         encode(sha256('the bytes'), 'hex'), user_id FROM lot WHERE code = 'G1'`,
      `DELETE FROM label_run WHERE id = '${id}'`,
    );
    expect(found).toContain(`printed label run ${id}`);
  });
});
