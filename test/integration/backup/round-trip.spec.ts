import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { restoreBackup, verifyArchive } from '@api/platform/backup';
import { backUpToFile } from '@api/platform/backup/command-line';
import { ask } from '../../support/database/ask';
import { catalogueOf } from '../../support/database/catalogue';
import { createEmptyDatabase, type TestDatabase } from '../../support/database/test-database';
import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSpecification, addSupplier, receive } from '../../support/workshop/fixtures';

/** Everything that could be mistaken for the end of a row, of a column or of the table. */
const AWKWARD = 'Tab\there \\. back\\slash "quote" \'apostrophe\' \\N éçø 巧克力 🍫';

let service: TestService;
let folder: string;
let archive: string;
let itemId: string;
let supplierId: string;
const databases: TestDatabase[] = [];

const emptyDatabase = async (): Promise<string> => {
  const database = await createEmptyDatabase();
  databases.push(database);
  return database.url;
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'ballotin-backup-'));
  archive = join(folder, 'one.ballotin');
  service = await startTestService();
  supplierId = (await addSupplier(service, AWKWARD)).id;
  itemId = (await addItem(service, { name: 'Invented couverture', kind: 'ingredient' })).id;
  await addSpecification(service, itemId, supplierId, { milk: 'contains', nuts: 'unknown' });
  for (let day = 1; day <= 5; day += 1) {
    await receive(service, supplierId, { itemId, quantity: `${String(day)}000.125` });
  }
  await ask(service.databaseUrl, 'UPDATE supplier SET note = $1', ['Line one\r\n\\.\nline three']);
});
afterAll(async () => {
  await service.close();
  await Promise.all(databases.map((database) => database.drop()));
  rmSync(folder, { recursive: true, force: true });
});

const rowsOf = async (url: string): Promise<Record<string, string[]>> => {
  const tables = await ask<{ name: string }>(
    url,
    `SELECT tablename AS name FROM pg_tables
      WHERE schemaname = 'public' AND tablename <> '_prisma_migrations'`,
  );
  if (tables.length === 0) return {};
  const rows = await ask<{ name: string; row: string }>(
    url,
    tables
      .map(({ name }) => `SELECT '${name}' AS name, to_jsonb(t)::text AS row FROM "${name}" t`)
      .join(' UNION ALL ')
      .concat(' ORDER BY 1, 2'),
  );
  return Object.fromEntries(
    tables.map(({ name }) => [name, rows.filter((row) => row.name === name).map(({ row }) => row)]),
  );
};

describe('a backup that is restored', () => {
  let restored: string;

  beforeAll(async () => {
    const saved = await backUpToFile(service.databaseUrl, archive);
    expect(saved.rows).toBeGreaterThan(20);
    restored = await emptyDatabase();
    expect(await restoreBackup(archive, restored)).toEqual(saved);
  });

  it('has every row of every table as it was', async () => {
    const [before, after] = [await rowsOf(service.databaseUrl), await rowsOf(restored)];
    expect(after).toEqual(before);
    expect(after['supplier']?.join()).toContain('巧克力');
    expect(after['movement']).toHaveLength(5);
  });

  it('has every constraint, trigger, index and function, switched on', async () => {
    const catalogue = await catalogueOf(restored);
    expect(catalogue).toEqual(await catalogueOf(service.databaseUrl));
    expect(catalogue.some((line) => line.includes('FOREIGN KEY'))).toBe(true);
    expect(catalogue.some((line) => line.includes('append_only'))).toBe(true);
    expect(catalogue.filter((line) => line.endsWith('enabled=D'))).toEqual([]);
  });

  it('refuses changes of append-only tables as before', async () => {
    for (const table of ['movement', 'journal_entry', 'delivery_line']) {
      await expect(ask(restored, `DELETE FROM ${table}`)).rejects.toMatchObject({ code: 'BL001' });
      await expect(ask(restored, `TRUNCATE ${table} CASCADE`)).rejects.toMatchObject({
        code: 'BL001',
      });
    }
  });

  it('goes on counting where it was', async () => {
    const sequences = `SELECT sequencename, last_value::text FROM pg_sequences ORDER BY 1`;
    const before = await ask<{ sequencename: string; last_value: string | null }>(
      service.databaseUrl,
      sequences,
    );
    expect(await ask(restored, sequences)).toEqual(before);
    const lots = before.find(({ sequencename }) => sequencename === 'lot_code_seq');
    const [next] = await ask<{ next: string }>(restored, `SELECT nextval('lot_code_seq') AS next`);
    expect(Number(next?.next)).toBe(Number(lots?.last_value ?? 0) + 1);
    expect(lots?.last_value).not.toBeNull();
  });

  it('gives the same archive when it is backed up again, the instant apart', async () => {
    const again = join(folder, 'again.ballotin');
    const third = await emptyDatabase();
    await restoreBackup(archive, third);
    await backUpToFile(third, again);
    expect(await verifyArchive(again)).toEqual(await verifyArchive(archive));
  });

  it('is not put into a database that is in use', async () => {
    const before = await rowsOf(service.databaseUrl);
    await expect(restoreBackup(archive, service.databaseUrl)).rejects.toThrow('in use');
    expect(await rowsOf(service.databaseUrl)).toEqual(before);
  });
});

describe('a backup file', () => {
  it('is for its owner only and leaves nothing else behind', () => {
    expect(statSync(archive).mode & 0o777).toBe(0o600);
    expect(() => statSync(`${archive}.partial`)).toThrow('ENOENT');
  });

  it('is refused when it is cut off anywhere', async () => {
    const whole = readFileSync(archive);
    for (const share of [0.05, 0.5, 0.9, 0.999, (whole.length - 1) / whole.length]) {
      const file = join(folder, 'cut.ballotin');
      writeFileSync(file, whole.subarray(0, Math.floor(whole.length * share)));
      await expect(verifyArchive(file)).rejects.toThrow(/damaged/);
    }
  });

  it('is refused when one gram in it was changed', async () => {
    const text = gunzipSync(readFileSync(archive)).toString('utf8');
    const changed = text.replace('3000.125', '3000.126');
    expect(changed).not.toBe(text);
    const file = join(folder, 'changed.ballotin');
    writeFileSync(file, gzipSync(changed));
    await expect(verifyArchive(file)).rejects.toThrow(/the rows of \w+ are not those/);
    const target = await emptyDatabase();
    await expect(restoreBackup(file, target)).rejects.toThrow(/are not those/);
    expect(await rowsOf(target)).toEqual({});
  });

  it('is refused when a table is left out', async () => {
    const text = gunzipSync(readFileSync(archive)).toString('utf8');
    const from = text.indexOf('{"table":"hold"');
    const to = text.indexOf('{"table":"', from + 1);
    const file = join(folder, 'short.ballotin');
    writeFileSync(file, gzipSync(text.slice(0, from) + text.slice(to)));
    await expect(verifyArchive(file)).rejects.toThrow('parts are missing');
  });

  it('is refused when it is some other file', async () => {
    const file = join(folder, 'other');
    writeFileSync(file, 'Dear customer');
    await expect(verifyArchive(file)).rejects.toThrow('not a backup');
    writeFileSync(file, gzipSync('Dear customer'));
    await expect(verifyArchive(file)).rejects.toThrow('not a backup');
    await expect(verifyArchive(join(folder, 'nothing'))).rejects.toThrow('no such file');
  });

  it('is refused when the program does not know its schema', async () => {
    const text = gunzipSync(readFileSync(archive)).toString('utf8');
    const file = join(folder, 'newer.ballotin');
    const later = '"migrations":[{"name":"29990101000000_later","checksum":"0"},';
    writeFileSync(file, gzipSync(text.replace('"migrations":[', later)));
    await expect(restoreBackup(file, await emptyDatabase())).rejects.toThrow(
      '29990101000000_later',
    );
  });
});
