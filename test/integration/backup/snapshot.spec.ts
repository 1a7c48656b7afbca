import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { restoreBackup } from '@api/platform/backup';
import { backUpToFile } from '@api/platform/backup/command-line';
import { migrate, migrateTo, migrationsFolder, readMigrations } from '@api/platform/migrations';
import { Client } from 'pg';
import { ask } from '../../support/database/ask';
import { catalogueOf } from '../../support/database/catalogue';
import {
  createEmptyDatabase,
  createTestDatabase,
  type TestDatabase,
} from '../../support/database/test-database';

let folder: string;
const databases: TestDatabase[] = [];

const keep = async (making: Promise<TestDatabase>): Promise<string> => {
  const database = await making;
  databases.push(database);
  return database.url;
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballotin-snapshot-'));
});
afterAll(async () => {
  await Promise.all(databases.map((database) => database.drop()));
  rmSync(folder, { recursive: true, force: true });
});

/** Books pairs of a supplier and a journal entry, each pair in one transaction, until told to stop. */
const bookPairs = (url: string): { stop: () => Promise<number> } => {
  const state = { stopped: false };
  const work = (async () => {
    const client = new Client({ connectionString: url });
    await client.connect();
    let pairs = 0;
    for (; !state.stopped; pairs += 1) {
      const name = `Supplier ${String(pairs)}`;
      await client.query('BEGIN');
      await client.query('INSERT INTO supplier (id, name) VALUES (gen_random_uuid(), $1)', [name]);
      await client.query(
        `INSERT INTO journal_entry (user_name, action, subject_kind, subject_id)
         VALUES ('Nobody', 'supplier.added', 'supplier', $1)`,
        [name],
      );
      await client.query('COMMIT');
    }
    await client.end();
    return pairs;
  })();
  return {
    stop: () => {
      state.stopped = true;
      return work;
    },
  };
};

describe('a backup taken while bookings go on', () => {
  it('holds whole transactions only, and numbers go on after the last one in it', async () => {
    const url = await keep(createTestDatabase());
    const booking = bookPairs(url);
    await new Promise((resolve) => setTimeout(resolve, 300));
    const file = join(folder, 'busy.ballotin');
    await backUpToFile(url, file);
    const booked = await booking.stop();
    const restored = await keep(createEmptyDatabase());
    await restoreBackup(file, restored);
    const [counts] = await ask<{ suppliers: number; entries: number; unpaired: number }>(
      restored,
      `SELECT (SELECT count(*)::int FROM supplier) AS suppliers,
              (SELECT count(*)::int FROM journal_entry) AS entries,
              (SELECT count(*)::int FROM supplier p FULL JOIN journal_entry j
                  ON j.subject_id = p.name WHERE p.id IS NULL OR j.id IS NULL) AS unpaired`,
    );
    expect(counts?.suppliers).toBeGreaterThan(0);
    expect(counts?.suppliers).toBeLessThanOrEqual(booked);
    expect(counts).toMatchObject({ entries: counts?.suppliers, unpaired: 0 });
    await expect(
      ask(
        restored,
        `INSERT INTO journal_entry (user_name, action, subject_kind, subject_id)
         VALUES ('Nobody', 'supplier.added', 'supplier', 'one more') RETURNING id`,
      ),
    ).resolves.toHaveLength(1);
  });
});

describe('a backup of an older schema', () => {
  it('is loaded into that schema and then brought up to date', async () => {
    const migrations = readMigrations(migrationsFolder());
    const older = migrations.slice(0, 2).map(({ name }) => name);
    const url = await keep(createEmptyDatabase());
    expect(await migrateTo(url, older)).toEqual(older);
    await ask(url, `INSERT INTO supplier (id, name) VALUES (gen_random_uuid(), 'A')`);
    const file = join(folder, 'older.ballotin');
    expect((await backUpToFile(url, file)).schema).toBe(older.at(-1));
    const restored = await keep(createEmptyDatabase());
    await restoreBackup(file, restored);
    expect(await ask(restored, 'SELECT name FROM supplier')).toEqual([{ name: 'A' }]);
    expect(await migrate(restored)).toEqual([]);
    expect(await catalogueOf(restored)).toEqual(
      await catalogueOf(await keep(createTestDatabase())),
    );
  });
});
