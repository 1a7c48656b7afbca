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

const run = async (sql: string): Promise<void> => {
  const client = new Client({ connectionString: serverUrl() });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
};

const create = async (clause: string): Promise<TestDatabase> => {
  const name = `test_${randomBytes(8).toString('hex')}`;
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
