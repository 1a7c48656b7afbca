import { createHash } from 'node:crypto';
import { once } from 'node:events';
import type { Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import type { Client } from 'pg';
import { to as copyTo } from 'pg-copy-streams';
import { readAppliedMigrations } from '../migrations';
import {
  type BackupSummary,
  END_OF_ROWS,
  FORMAT,
  FORMAT_VERSION,
  type Header,
  type TableEnd,
} from './archive-format';
import { copyOut, fixFormats, readSequences, readTables, type Table } from './catalogue';
import { connected } from './connected';

const write = async (sink: Writable, chunk: Buffer | string): Promise<void> => {
  if (!sink.write(chunk)) await once(sink, 'drain');
};

/** Streams one table's rows through `sink`, which may be absent when only the sum is wanted. */
export const copyTable = async (
  client: Client,
  table: Table,
  sink?: Writable,
): Promise<TableEnd> => {
  const hash = createHash('sha256');
  const source = client.query(copyTo(copyOut(table)));
  for await (const chunk of source as AsyncIterable<Buffer>) {
    hash.update(chunk);
    if (sink !== undefined) await write(sink, chunk);
  }
  return { rows: source.rowCount, sha256: hash.digest('hex') };
};

const writeLine = (sink: Writable, line: string): Promise<void> => write(sink, `${line}\n`);

const writeSnapshot = async (client: Client, sink: Writable): Promise<BackupSummary> => {
  const migrations = await readAppliedMigrations(client);
  const takenAt = new Date().toISOString();
  const header: Header = { format: FORMAT, version: FORMAT_VERSION, takenAt, migrations };
  await writeLine(sink, JSON.stringify(header));
  const tables = await readTables(client);
  let rows = 0;
  for (const table of tables) {
    await writeLine(sink, JSON.stringify({ table: table.name, columns: table.columns }));
    const end = await copyTable(client, table, sink);
    await writeLine(sink, END_OF_ROWS);
    await writeLine(sink, JSON.stringify(end));
    rows += end.rows;
  }
  // Sequences stand outside transactions. Read last, they are never behind a row of the snapshot.
  const sequences = await readSequences(client);
  await writeLine(sink, JSON.stringify({ sequences, tables: tables.length, rows }));
  return { takenAt, schema: migrations.at(-1)?.name ?? 'none', tables: tables.length, rows };
};

/**
 * Writes everything in the database, as of one instant, to a stream as one compressed archive.
 * The service goes on working meanwhile. The stream is ended at the end.
 */
export const writeBackup = (url: string, target: Writable): Promise<BackupSummary> =>
  connected(url, async (client) => {
    await fixFormats(client);
    await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    const gzip = createGzip();
    const written = pipeline(gzip, target);
    const work = writeSnapshot(client, gzip).then((summary) => {
      gzip.end();
      return summary;
    });
    // Whichever fails first ends the other: a full disk must not leave the copy waiting for ever.
    const [summary] = await Promise.all([work, written]).catch((error: unknown) => {
      gzip.destroy();
      throw error;
    });
    await client.query('COMMIT');
    return summary;
  });
