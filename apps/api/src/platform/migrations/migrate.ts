import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { Client, type ClientBase, DatabaseError } from 'pg';
import { repositoryRoot } from '../config/config';
import { MigrationError } from './migration-error';
import { type MigrationFile, readMigrations } from './migration-files';

/** Prisma takes the same lock, so the two never migrate one database at the same time. */
const ADVISORY_LOCK = 72_707_369;

/** Prisma's own table, column for column, so that `prisma migrate deploy` can take over. */
const TABLE = `CREATE TABLE IF NOT EXISTS _prisma_migrations (
  id                  VARCHAR(36) PRIMARY KEY NOT NULL,
  checksum            VARCHAR(64) NOT NULL,
  finished_at         TIMESTAMPTZ,
  migration_name      VARCHAR(255) NOT NULL,
  logs                TEXT,
  rolled_back_at      TIMESTAMPTZ,
  started_at          TIMESTAMPTZ NOT NULL DEFAULT now(),
  applied_steps_count INTEGER NOT NULL DEFAULT 0
)`;

interface AppliedRow {
  readonly migration_name: string;
  readonly checksum: string;
  readonly finished: boolean;
}

/** The rows that count: what was rolled back is history only. */
const readApplied = async (client: Client): Promise<AppliedRow[]> => {
  const { rows } = await client.query<AppliedRow>(
    `SELECT migration_name, checksum, finished_at IS NOT NULL AS finished
       FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY started_at`,
  );
  return rows;
};

/** The migrations still to apply; refuses a history that these files cannot continue. */
const pending = (files: readonly MigrationFile[], applied: readonly AppliedRow[]) => {
  const byName = new Map(files.map((file) => [file.name, file]));
  for (const row of applied) {
    const name = row.migration_name;
    const file = byName.get(name);
    if (!row.finished) {
      throw new MigrationError(
        `The migration ${name} failed half way in this database. Put right what it left, mark ` +
          'its row in _prisma_migrations as rolled back, then start again.',
      );
    }
    if (file === undefined) {
      throw new MigrationError(
        `The database has the migration ${name}, which this version of the program does not ` +
          'know. It was used by a newer version: start that one.',
      );
    }
    if (file.checksum !== row.checksum) {
      throw new MigrationError(
        `The migration ${name} was edited after it was applied to this database. Restore the ` +
          'file and write the change as a new migration.',
      );
    }
  }
  const done = new Set(applied.map((row) => row.migration_name));
  return files.filter((file) => !done.has(file.name));
};

/** Where in the file the database stopped: `position` counts characters from 1. */
const describe = (file: MigrationFile, error: unknown): string => {
  if (!(error instanceof DatabaseError)) return String(error);
  const line =
    error.position === undefined
      ? ''
      : `line ${String(file.sql.slice(0, Number(error.position) - 1).split('\n').length)}: `;
  return `${line}${error.message} (${error.code ?? 'no code'})`;
};

const record = (client: Client, file: MigrationFile, failure: string | null) =>
  client.query(
    `INSERT INTO _prisma_migrations
       (id, checksum, migration_name, finished_at, rolled_back_at, logs, applied_steps_count)
     VALUES ($1, $2, $3, CASE WHEN $4::text IS NULL THEN clock_timestamp() END,
             CASE WHEN $4::text IS NOT NULL THEN clock_timestamp() END, $4,
             CASE WHEN $4::text IS NULL THEN 1 ELSE 0 END)`,
    [randomUUID(), file.checksum, file.name, failure],
  );

/** One file in one transaction. A failure leaves the schema as it was, and a row that says why. */
const apply = async (client: Client, file: MigrationFile): Promise<void> => {
  try {
    await client.query('BEGIN');
    await client.query(file.sql);
    await record(client, file, null);
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    const failure = describe(file, error);
    await record(client, file, failure);
    throw new MigrationError(`The migration ${file.name} failed and was rolled back: ${failure}`);
  }
};

/** The reviewed migrations of this program. */
export const migrationsFolder = (): string => join(repositoryRoot, 'prisma', 'migrations');

/** The migrations that a database has, oldest first. */
export const readAppliedMigrations = async (
  client: ClientBase,
): Promise<Pick<MigrationFile, 'name' | 'checksum'>[]> => {
  const { rows } = await client.query<Pick<MigrationFile, 'name' | 'checksum'>>(
    `SELECT migration_name AS name, checksum FROM _prisma_migrations
      WHERE rolled_back_at IS NULL AND finished_at IS NOT NULL
      ORDER BY migration_name COLLATE "C"`,
  );
  return rows;
};

const run = async (
  url: string,
  folder: string,
  wanted: (file: MigrationFile) => boolean,
): Promise<string[]> => {
  const client = new Client({ connectionString: url });
  client.on('error', () => undefined);
  await client.connect();
  try {
    await client.query("SET lock_timeout = '60s'");
    await client.query('SELECT pg_advisory_lock($1)', [ADVISORY_LOCK]);
    await client.query(TABLE);
    const todo = pending(readMigrations(folder), await readApplied(client)).filter(wanted);
    for (const file of todo) await apply(client, file);
    return todo.map((file) => file.name);
  } finally {
    await client.end().catch(() => undefined);
  }
};

/**
 * Brings a database up to date with the migration files, in order of their names, under an
 * advisory lock. Answers the names of those it applied; a second call applies none.
 */
export const migrate = (url: string, folder = migrationsFolder()): Promise<string[]> =>
  run(url, folder, () => true);

/** The same, but only as far as these migrations: the schema that an older backup needs. */
export const migrateTo = (url: string, names: readonly string[]): Promise<string[]> =>
  run(url, migrationsFolder(), ({ name }) => names.includes(name));
