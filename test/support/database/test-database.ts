import { randomBytes } from 'node:crypto';
import { Client } from 'pg';
import { SERVER_URL_VARIABLE, TEMPLATE } from './test-server';

export interface TestDatabase {
  readonly url: string;
  readonly drop: () => Promise<void>;
}

const serverUrl = (): string => {
  const url = process.env[SERVER_URL_VARIABLE];
  if (url === undefined) {
    throw new Error('No test database server: run this size of test through jest.config.js.');
  }
  return url;
};

const withServer = async <T>(work: (client: Client) => Promise<T>): Promise<T> => {
  const client = new Client({ connectionString: serverUrl() });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
};

const run = (sql: string): Promise<void> =>
  withServer(async (client) => {
    await client.query(sql);
  });

const create = async (
  clause: string,
  name = `test_${randomBytes(8).toString('hex')}`,
): Promise<TestDatabase> => {
  await run(`CREATE DATABASE ${name} ${clause}`);
  const url = new URL(serverUrl());
  url.pathname = `/${name}`;
  return { url: url.href, drop: () => run(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`) };
};

/** A database of the test's own with the whole schema and no rows, in some 30 ms. */
export const createTestDatabase = (): Promise<TestDatabase> =>
  create(`TEMPLATE ${TEMPLATE} STRATEGY wal_log`);

/** A database without any table, for the tests of migrations and of restoring. */
export const createEmptyDatabase = (): Promise<TestDatabase> => create('TEMPLATE template0');

/**
 * A database filled once a run, by whichever worker asks first, and copied for each test: what takes
 * a minute to make takes a moment to copy.
 * @param kind names what it is filled with
 */
export const createFilledDatabase = (
  kind: string,
  fill: (database: TestDatabase) => Promise<void>,
): Promise<TestDatabase> =>
  withServer(async (client) => {
    const template = `filled_${kind}`;
    await client.query('SELECT pg_advisory_lock(hashtext($1))', [template]);
    const known = await client.query('SELECT FROM pg_database WHERE datname = $1', [template]);
    if (known.rowCount === 0) {
      const making = `making_${kind}`;
      await client.query(`DROP DATABASE IF EXISTS ${making} WITH (FORCE)`);
      await fill(await create(`TEMPLATE ${TEMPLATE} STRATEGY wal_log`, making));
      await client.query(`ALTER DATABASE ${making} RENAME TO ${template}`);
    }
    return create(`TEMPLATE ${template} STRATEGY file_copy`);
  });
