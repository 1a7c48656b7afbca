import { createHash } from 'node:crypto';
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { migrate, migrationsFolder, readMigrations } from '@api/platform/migrations';
import { ask } from '../../support/database/ask';
import { catalogueOf } from '../../support/database/catalogue';
import {
  createEmptyDatabase,
  createTestDatabase,
  type TestDatabase,
} from '../../support/database/test-database';

let folder: string;
let database: TestDatabase;

const write = (name: string, sql: string): void => {
  mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, name, 'migration.sql'), sql);
};

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'ballotin-migrations-'));
  database = await createEmptyDatabase();
  write('20260101000000_first', 'CREATE TABLE first (id int);');
  write('20260102000000_second', 'ALTER TABLE first ADD COLUMN name text;');
});
afterEach(async () => {
  await database.drop();
  rmSync(folder, { recursive: true, force: true });
});

interface Row {
  readonly migration_name: string;
  readonly checksum: string;
  readonly finished: boolean;
  readonly rolled_back: boolean;
  readonly logs: string | null;
  readonly applied_steps_count: number;
}

const history = (): Promise<Row[]> =>
  ask<Row & Record<string, unknown>>(
    database.url,
    `SELECT migration_name, checksum, finished_at IS NOT NULL AS finished,
            rolled_back_at IS NOT NULL AS rolled_back, logs, applied_steps_count
       FROM _prisma_migrations ORDER BY started_at, migration_name`,
  );

describe("the program's own migrations", () => {
  it('build the whole schema from nothing, and a second time do nothing', async () => {
    const names = readMigrations(migrationsFolder()).map(({ name }) => name);
    expect(await migrate(database.url)).toEqual(names);
    expect(await migrate(database.url)).toEqual([]);
    const template = await createTestDatabase();
    expect(await catalogueOf(database.url)).toEqual(await catalogueOf(template.url));
    await template.drop();
  });
});

describe('a migration', () => {
  it('is applied once, in the order of names, and written down as Prisma does', async () => {
    expect(await migrate(database.url, folder)).toEqual([
      '20260101000000_first',
      '20260102000000_second',
    ]);
    write('20260103000000_third', 'ALTER TABLE first ADD COLUMN age int;');
    expect(await migrate(database.url, folder)).toEqual(['20260103000000_third']);
    const rows = await history();
    expect(rows.map((row) => row.migration_name)).toEqual([
      '20260101000000_first',
      '20260102000000_second',
      '20260103000000_third',
    ]);
    const sum = createHash('sha256').update('CREATE TABLE first (id int);').digest('hex');
    expect(rows[0]).toEqual({
      migration_name: '20260101000000_first',
      checksum: sum,
      finished: true,
      rolled_back: false,
      logs: null,
      applied_steps_count: 1,
    });
  });

  it('that was edited after it was applied is refused by name', async () => {
    await migrate(database.url, folder);
    appendFileSync(join(folder, '20260101000000_first', 'migration.sql'), '\n-- a later thought');
    write('20260103000000_third', 'ALTER TABLE first ADD COLUMN age int;');
    await expect(migrate(database.url, folder)).rejects.toThrow(
      'The migration 20260101000000_first was edited',
    );
    expect(await history()).toHaveLength(2);
  });

  it('that fails leaves nothing behind but a row that names it, and can be tried again', async () => {
    write('20260103000000_third', 'CREATE TABLE third (id int);\nSELECT nonsense;');
    await expect(migrate(database.url, folder)).rejects.toThrow(
      /20260103000000_third failed and was rolled back: line 2: .*nonsense.*42703/,
    );
    const failed = (await history()).at(-1);
    expect(failed).toMatchObject({ finished: false, rolled_back: true, applied_steps_count: 0 });
    expect(failed?.logs).toContain('nonsense');
    expect(await ask(database.url, `SELECT to_regclass('third') AS third`)).toEqual([
      { third: null },
    ]);
    write('20260103000000_third', 'CREATE TABLE third (id int);');
    expect(await migrate(database.url, folder)).toEqual(['20260103000000_third']);
  });

  it('that another tool left half done is refused by name', async () => {
    await migrate(database.url, folder);
    await ask(
      database.url,
      `UPDATE _prisma_migrations SET finished_at = NULL
      WHERE migration_name = '20260102000000_second'`,
    );
    await expect(migrate(database.url, folder)).rejects.toThrow(
      '20260102000000_second failed half way',
    );
  });

  it('that the database has and the program does not know is refused by name', async () => {
    await migrate(database.url, folder);
    rmSync(join(folder, '20260102000000_second'), { recursive: true });
    await expect(migrate(database.url, folder)).rejects.toThrow(
      'has the migration 20260102000000_second, which this version',
    );
  });

  it('is applied once when several services start at the same moment', async () => {
    const all = await Promise.all([1, 2, 3].map(() => migrate(database.url, folder)));
    expect(all.flat()).toHaveLength(2);
    expect(await history()).toHaveLength(2);
  });

  it('of a copied folder has the same sums, so that the program can be moved', async () => {
    await migrate(database.url, folder);
    const copy = mkdtempSync(join(tmpdir(), 'ballotin-migrations-'));
    cpSync(folder, copy, { recursive: true });
    expect(await migrate(database.url, copy)).toEqual([]);
    rmSync(copy, { recursive: true });
  });
});
