import { verifyDatabase } from '@api/platform/verify';
import { Client } from 'pg';
import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { createTestDatabase, type TestDatabase } from '../../support/database/test-database';

const FIRST = '00000000-0000-4000-8000-000000000001';
const SECOND = '00000000-0000-4000-8000-000000000002';

/** Faults of what is sealed, journalled or put right by an opposite entry; the ledger's stand beside. */
describe('verify, past every trigger', () => {
  let database: TestDatabase;
  let books: Books;
  let intruder: Client;

  const faults = async (): Promise<string[]> =>
    (await verifyDatabase(database.url)).map((fault) => `${fault.rule} ${fault.subject}`);

  /** What is found while the fault is there; nothing may be left of it afterwards. */
  const planted = async (sql: string, undo: string): Promise<string[]> => {
    await intruder.query(sql);
    const found = await faults();
    await intruder.query(undo);
    expect(await faults()).toEqual([]);
    return found;
  };

  beforeAll(async () => {
    database = await createTestDatabase();
    books = await Books.open(database.url);
    await smallShop(books);
    // A frozen case with a step, a complaint with a photograph and a hold, all as they should be.
    await books.query(`
      INSERT INTO recall_case (id, code, mode, reason, roots, state, opened_by_id, frozen_at, frozen_scope)
      SELECT '${FIRST}', 'R1', 'real', 'x', '[]', 'frozen', id, now(), '{"lots": ["G1"]}' FROM app_user`);
    await books.query(`
      INSERT INTO recall_action (id, case_id, kind, at, user_id)
      SELECT '${FIRST}', '${FIRST}', 'opened', '2026-03-20', id FROM app_user`);
    await books.query(`
      INSERT INTO complaint (id, code, code_as_read, kind, what, received_on, at, user_id)
      SELECT '${FIRST}', 'C1', 'B1', 'taste', 'x', '2026-03-20', '2026-03-20', id FROM app_user`);
    await books.query(`
      INSERT INTO complaint_photo (id, complaint_id, name, media_type, sha256, bytes, at, user_id)
      SELECT '${FIRST}', '${FIRST}', 'x', 'image/png', encode(sha256('picture'), 'hex'), 'picture',
        '2026-03-20', id FROM app_user`);
    await books.query(
      `INSERT INTO hold (id, lot_id, kind, reason, placed_at, placed_by_id)
       SELECT '${FIRST}', $1, 'person', 'x', '2026-03-20', id FROM app_user`,
      [books.id('G1')],
    );
    await books.query(`
      INSERT INTO journal_entry (at, user_id, user_name, action, subject_kind, subject_id)
      SELECT DISTINCT at, user_id, 'A maker', 'booked', 'test', 'test' FROM (
        SELECT at, user_id FROM movement UNION SELECT '2026-03-20', id FROM app_user) booked`);
    intruder = new Client({ connectionString: database.url });
    await intruder.connect();
    await intruder.query('SET session_replication_role = replica');
  });

  afterAll(async () => {
    await intruder.end();
    await books.close();
    await database.drop();
  });

  it('finds nothing before a fault is planted', async () => {
    expect(await faults()).toEqual([]);
  });

  it('names a frozen scope that was changed', async () => {
    const found = await planted(
      `UPDATE recall_case SET frozen_scope = '{"lots": []}'`,
      `UPDATE recall_case SET frozen_scope = '{"lots": ["G1"]}'`,
    );
    expect(found).toEqual([`frozen recall_case ${FIRST}`]);
  });

  it.each([
    ['a frozen scope', 'recall_case', () => FIRST],
    ['an approved specification', 'specification', () => books.id('specification tea Dairy')],
  ])('names %s whose seal was broken off', async (_, kind, id) => {
    const found = await planted(
      `CREATE TABLE aside AS SELECT * FROM frozen_content WHERE subject_id = '${id()}';
       DELETE FROM frozen_content WHERE subject_id = '${id()}'`,
      'INSERT INTO frozen_content SELECT * FROM aside; DROP TABLE aside',
    );
    expect(found).toEqual([`unfrozen ${kind} ${id()}`]);
  });

  it('names a photograph that is not the one that was kept', async () => {
    const found = await planted(
      `UPDATE complaint_photo SET bytes = 'another'`,
      `UPDATE complaint_photo SET bytes = 'picture'`,
    );
    expect(found).toEqual([`printed photograph ${FIRST}`]);
  });

  it.each([
    ['a hold', 'hold', 'placed_at'],
    ['a complaint', 'complaint', 'at'],
    ['a step of a recall', 'recall_action', 'at'],
  ])('names %s that no journal entry speaks of', async (_, table, column) => {
    const found = await planted(
      `UPDATE ${table} SET ${column} = '2026-03-21'`,
      `UPDATE ${table} SET ${column} = '2026-03-20'`,
    );
    expect(found).toEqual([`journal ${table.replace('_', ' ')} ${FIRST}`]);
  });

  it('names an opposite draw that is not the opposite', async () => {
    const found = await planted(
      `INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, reverses_id, at, user_id)
       SELECT '${SECOND}', batch_id, lot_id, role, -1, -1, 0, id, at, user_id FROM draw
       WHERE batch_id = '${books.id('K1')}' AND lot_id = '${books.id('CR1')}'`,
      `DELETE FROM draw WHERE id = '${SECOND}'`,
    );
    expect(found).toContain(`reversal ${SECOND}`);
    expect(found).toContain('batch-balance K1');
  });

  it('names an opposite loss that is not the opposite', async () => {
    const found = await planted(
      `INSERT INTO batch_loss (id, batch_id, kind, mass_g, reverses_id, at, user_id)
       SELECT '${SECOND}', batch_id, kind, -1, id, at, user_id FROM batch_loss WHERE kind = 'steam'`,
      `DELETE FROM batch_loss WHERE id = '${SECOND}'`,
    );
    expect(found).toContain(`reversal ${SECOND}`);
  });

  it('names a movement of a draw that is gone, and one of a sale that is gone', async () => {
    const gone = async (table: string, where: string): Promise<string[]> =>
      planted(
        `CREATE TABLE aside AS SELECT * FROM ${table} WHERE ${where}; DELETE FROM ${table} WHERE ${where}`,
        `INSERT INTO ${table} SELECT * FROM aside; DROP TABLE aside`,
      );
    const draws = await gone('draw', `batch_id = '${books.id('X1')}' AND mass_g > 0`);
    expect(draws.some((fault) => fault.startsWith('draw-moves '))).toBe(true);
    const sales = await gone('dispatch_line', `dispatch_id = '${books.id('D1')}'`);
    expect(sales.some((fault) => fault.startsWith('dispatch-moves '))).toBe(true);
  });

  it('names a lot whose batch lost more than was drawn into it', async () => {
    const found = await planted(
      `UPDATE batch_loss SET mass_g = mass_g + 5000 WHERE kind = 'steam'`,
      `UPDATE batch_loss SET mass_g = mass_g - 5000 WHERE kind = 'steam'`,
    );
    expect(found.some((fault) => fault.startsWith('losses-exceed'))).toBe(true);
  });
});
