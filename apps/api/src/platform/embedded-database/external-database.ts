import { DatabaseStartError } from './database-start-error';
import { queryOnce } from './query-once';

const OLDEST_MAJOR = 15;

export interface ServerFacts {
  /** As `server_version_num`: 150018 is 15.18. */
  readonly version: number;
  readonly encoding: string;
}

const reason = (error: unknown): string => {
  // A refused connection to a name with two addresses comes as an AggregateError without a text.
  const parts = error instanceof AggregateError ? (error.errors as unknown[]) : [error];
  return parts.map((part) => (part instanceof Error ? part.message : String(part))).join('; ');
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

/** @throws DatabaseStartError when the service cannot work with such a server. */
export const refuseUnfit = (where: string, { version, encoding }: ServerFacts): void => {
  const major = Math.floor(version / 10_000);
  if (major < OLDEST_MAJOR) {
    throw new DatabaseStartError(
      `DATABASE_URL names ${where}, a PostgreSQL ${String(major)}. Ballotin needs PostgreSQL ` +
        `${String(OLDEST_MAJOR)} or newer: update that server, or unset DATABASE_URL to use the ` +
        'database that comes with the program.',
    );
  }
  if (encoding !== 'UTF8') {
    throw new DatabaseStartError(
      `The database ${where} is in ${encoding}. Make it with ENCODING 'UTF8'.`,
    );
  }
};

/** Opens an external database once and looks whether the service can work with it. */
export const checkExternal = async (url: string): Promise<void> => {
  const where = withoutPassword(url);
  const facts = await queryOnce<ServerFacts>(
    url,
    `SELECT current_setting('server_version_num')::int AS version,
            current_setting('server_encoding') AS encoding`,
  ).catch((error: unknown) => {
    throw new DatabaseStartError(
      `DATABASE_URL names ${where}, which cannot be opened: ${reason(error)}`,
    );
  });
  if (facts !== undefined) refuseUnfit(where, facts);
};
