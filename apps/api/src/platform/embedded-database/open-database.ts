import { Client } from 'pg';
import { DatabaseStartError } from './database-start-error';
import { startEmbeddedServer } from './embedded-server';

export interface DatabaseConfig {
  /** An external PostgreSQL 15 or newer; when set, nothing is started here. */
  readonly databaseUrl?: string | undefined;
  /** The folder of the embedded database. */
  readonly dataFolder: string;
  /** Receives plain sentences for whoever looks at the console. */
  readonly say?: (line: string) => void;
}

export interface OpenDatabase {
  readonly url: string;
  readonly close: () => Promise<void>;
}

export const DATABASE_NAME = 'ballotin';
const OLDEST_MAJOR = 15;

const reason = (error: unknown): string => {
  // A refused connection to a name with two addresses comes as an AggregateError without a text.
  const parts = error instanceof AggregateError ? (error.errors as unknown[]) : [error];
  return parts.map((part) => (part instanceof Error ? part.message : String(part))).join('; ');
};

const query = async <Row extends object>(url: string, sql: string): Promise<Row | undefined> => {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  // A connection that breaks later must not end the process by an unheard event.
  client.on('error', () => undefined);
  try {
    await client.connect();
    return (await client.query<Row>(sql)).rows[0];
  } finally {
    await client.end().catch(() => undefined);
  }
};

/** Whom to connect to, without the password, for messages. */
const withoutPassword = (url: string): string => {
  try {
    const { hostname, port, pathname } = new URL(url);
    return `${hostname}${port === '' ? '' : `:${port}`}${pathname}`;
  } catch {
    return 'the address given';
  }
};

const checkExternal = async (url: string): Promise<void> => {
  const where = withoutPassword(url);
  const found = await query<{ version: number; encoding: string }>(
    url,
    `SELECT current_setting('server_version_num')::int AS version,
            current_setting('server_encoding') AS encoding`,
  ).catch((error: unknown) => {
    throw new DatabaseStartError(
      `DATABASE_URL names ${where}, which cannot be opened: ${reason(error)}`,
    );
  });
  const major = Math.floor((found?.version ?? 0) / 10_000);
  if (major < OLDEST_MAJOR) {
    throw new DatabaseStartError(
      `DATABASE_URL names ${where}, a PostgreSQL ${String(major)}. Ballotin needs PostgreSQL ` +
        `${String(OLDEST_MAJOR)} or newer: update that server, or unset DATABASE_URL to use the ` +
        'database that comes with the program.',
    );
  }
  if (found?.encoding !== 'UTF8') {
    throw new DatabaseStartError(
      `The database ${where} is in ${String(found?.encoding)}. Make it with ENCODING 'UTF8'.`,
    );
  }
};

/**
 * Opens the workshop's database: the external one that DATABASE_URL names, else the embedded one.
 * Throws DatabaseStartError with a sentence for whoever starts the service.
 */
export const openDatabase = async (config: DatabaseConfig): Promise<OpenDatabase> => {
  if (config.databaseUrl !== undefined && config.databaseUrl !== '') {
    await checkExternal(config.databaseUrl);
    return { url: config.databaseUrl, close: () => Promise.resolve() };
  }
  const server = await startEmbeddedServer({
    home: config.dataFolder,
    durable: true,
    say: config.say ?? console.info,
  });
  try {
    const exists = await query(
      server.urlOf('postgres'),
      `SELECT 1 AS found FROM pg_database WHERE datname = '${DATABASE_NAME}'`,
    );
    if (exists === undefined) {
      await query(server.urlOf('postgres'), `CREATE DATABASE ${DATABASE_NAME}`);
    }
    return { url: server.urlOf(DATABASE_NAME), close: server.stop };
  } catch (error) {
    await server.stop();
    throw error;
  }
};
