import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

export interface MigrationFile {
  /** Folder name, `<time>_<name>`; the order of names is the order of application. */
  readonly name: string;
  readonly sql: string;
  /** sha256 of the file, hex, as Prisma writes it. */
  readonly checksum: string;
}

export const readMigrations = (folder: string): MigrationFile[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => ({ name: entry.name, file: join(folder, entry.name, 'migration.sql') }))
    .filter(({ file }) => existsSync(file))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map(({ name, file }) => {
      const sql = readFileSync(file, 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    });
