import { createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { resolve } from 'node:path';
import { readConfig } from '../config/config';
import { openDatabase, runningDatabaseUrl } from '../embedded-database';
import { shutDown } from '../shutdown';
import { BackupError, type BackupSummary } from './archive-format';
import { verifyArchive } from './verify-archive';
import { restoreBackup } from './restore-backup';
import { writeBackup } from './write-backup';

const describe = ({ tables, rows, takenAt, schema }: BackupSummary): string =>
  `${String(rows)} rows of ${String(tables)} tables, as of ${takenAt}, schema ${schema}`;

/**
 * Writes a backup into a file: aside first, read again and only then under its name, so that a
 * file of that name is always whole. Readable by its owner only, as it holds names and addresses.
 */
export const backUpToFile = async (url: string, file: string): Promise<BackupSummary> => {
  const aside = `${file}.partial`;
  await rm(aside, { force: true });
  try {
    const summary = await writeBackup(url, createWriteStream(aside, { flags: 'wx', mode: 0o600 }));
    await verifyArchive(aside);
    const handle = await open(aside, 'r+');
    await handle.sync().finally(() => handle.close());
    await rename(aside, file);
    return summary;
  } catch (error) {
    await rm(aside, { force: true });
    throw error;
  }
};

/** Runs a command with the file that its caller names, and ends with one plain line. */
const command = async (name: string, work: (file: string) => Promise<string>): Promise<void> => {
  try {
    const [, , file] = process.argv;
    if (file === undefined) throw new BackupError(`Say which file: npm run ${name} -- <file>`);
    console.info(await work(resolve(file)));
  } catch (error) {
    process.exitCode = 1;
    console.error(error instanceof Error ? error.message : error);
  } finally {
    await shutDown();
  }
};

/** `npm run backup -- <file>`: also while the service is running. */
export const backupFromCommandLine = (): Promise<void> =>
  command('backup', async (file) => {
    const config = readConfig(process.env);
    const url = runningDatabaseUrl(config) ?? (await openDatabase(config)).url;
    return `Saved ${describe(await backUpToFile(url, file))}: ${file}`;
  });

/** `npm run restore -- <file>`: into a database that nobody has used yet, the service stopped. */
export const restoreFromCommandLine = (): Promise<void> =>
  command('restore', async (file) => {
    await verifyArchive(file);
    const { url } = await openDatabase(readConfig(process.env));
    return `Restored and compared ${describe(await restoreBackup(file, url))}.`;
  });
