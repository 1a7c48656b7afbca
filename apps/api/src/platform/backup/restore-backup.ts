import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Client } from 'pg';
import { from as copyFrom } from 'pg-copy-streams';
import { migrate, migrateTo, readMigrations, migrationsFolder } from '../migrations';
import {
  BackupError,
  type BackupSummary,
  type Footer,
  type Header,
  type TableStart,
} from './archive-format';
import { copyIn, fixFormats, quoted, readTables, type Table } from './catalogue';
import { connected } from './connected';
import { layGuardsAside } from './guards';
import { readArchive } from './read-archive';
import { verifyArchive } from './verify-archive';
import { copyTable } from './write-backup';

/** Only a database that nobody has used yet is written over. */
const emptyDatabase = async (client: Client): Promise<void> => {
  const tables = await readTables(client);
  for (const name of ['app_user', 'journal_entry', 'lot', 'item']) {
    if (!tables.some((table) => table.name === name)) continue;
    const { rowCount } = await client.query(`SELECT 1 FROM public.${quoted(name)} LIMIT 1`);
    if (rowCount === 0) continue;
    throw new BackupError(
      'This database is in use: restoring would mix two workshops. Restore into an empty one: ' +
        'name a new folder with BALLOTIN_DATA, or a new database with DATABASE_URL.',
    );
  }
  await client.query('DROP SCHEMA public CASCADE');
  await client.query('CREATE SCHEMA public');
};

const refuseUnknownSchema = ({ migrations }: Header): void => {
  const known = new Map(readMigrations(migrationsFolder()).map((file) => [file.name, file]));
  for (const { name, checksum } of migrations) {
    if (known.get(name)?.checksum === checksum) continue;
    throw new BackupError(
      `The archive was made with the schema change ${name}, which this version of Ballotin does ` +
        'not have. Restore it with the version that made it, or a newer one.',
    );
  }
};

/** Loads the parts of an archive inside one transaction. */
class Loading {
  private tables: readonly Table[] = [];
  private guards: { restore: () => Promise<void> } | undefined;
  private readonly loaded = new Set<string>();
  summary: BackupSummary = { takenAt: '', schema: '', tables: 0, rows: 0 };

  constructor(
    private readonly client: Client,
    private readonly url: string,
  ) {}

  async header(header: Header): Promise<void> {
    refuseUnknownSchema(header);
    const names = header.migrations.map(({ name }) => name);
    await migrateTo(this.url, names);
    await this.client.query('BEGIN');
    this.tables = await readTables(this.client);
    this.guards = await layGuardsAside(this.client, this.tables);
    this.summary = { ...this.summary, takenAt: header.takenAt, schema: names.at(-1) ?? 'none' };
  }

  async table({ table, columns }: TableStart, rows: AsyncIterable<Buffer>): Promise<void> {
    if (!this.tables.some(({ name }) => name === table)) {
      throw new BackupError(`The archive has a table ${table} that its schema does not have.`);
    }
    // Rows that a migration wrote are in the archive too.
    await this.client.query(`DELETE FROM public.${quoted(table)}`);
    await pipeline(Readable.from(rows), this.client.query(copyFrom(copyIn(table, columns))));
    this.loaded.add(table);
  }

  /** Everything is in: numbers go on where they were, guards come back, and all is read again. */
  async footer({ sequences, tables, rows }: Footer): Promise<void> {
    const missing = this.tables.filter(({ name }) => !this.loaded.has(name));
    if (missing.length > 0) {
      throw new BackupError(`The archive lacks ${missing.map(({ name }) => name).join(', ')}.`);
    }
    for (const { name, last } of sequences) {
      if (last === null) continue;
      await this.client.query('SELECT setval($1::regclass, $2::bigint)', [quoted(name), last]);
    }
    await this.guards?.restore();
    this.summary = { ...this.summary, tables, rows };
  }

  async tableSums(): Promise<Map<string, string>> {
    const sums = new Map<string, string>();
    for (const table of this.tables) {
      sums.set(table.name, (await copyTable(this.client, table)).sha256);
    }
    return sums;
  }
}

/**
 * Puts a backup into a database that nobody has used yet, and compares every table with the
 * archive before it counts. The archive may be of an older schema: it is loaded into that one and
 * then brought up to date. After a failure the database is empty and can be tried again.
 */
export const restoreBackup = async (file: string, url: string): Promise<BackupSummary> => {
  const stated = await verifyArchive(file);
  const summary = await connected(url, async (client) => {
    await fixFormats(client);
    await emptyDatabase(client);
    const loading = new Loading(client, url);
    await readArchive(file, {
      header: (header) => loading.header(header),
      table: (start, rows) => loading.table(start, rows),
      footer: (footer) => loading.footer(footer),
    });
    for (const [table, sum] of await loading.tableSums()) {
      if (stated.get(table) === sum) continue;
      throw new BackupError(`The table ${table} did not come back as it was saved.`);
    }
    await client.query('COMMIT');
    return loading.summary;
  });
  await migrate(url);
  return summary;
};
