import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from 'pg';
import {
  type EmbeddedServer,
  startEmbeddedServer,
} from '../../../apps/api/src/platform/embedded-database';
import { migrate } from '../../../apps/api/src/platform/migrations';

/** Tells the workers where the server of this run is. */
export const SERVER_URL_VARIABLE = 'BALLOTIN_TEST_SERVER';
export const TEMPLATE = 'ballotin_template';
const PREFIX = 'ballotin-test-';

interface TestServer {
  readonly server: EmbeddedServer;
  readonly home: string;
}

/** Kept on `globalThis`: jest loads this module afresh for each hook. */
const store = globalThis as { ballotinTestServer?: Promise<TestServer> | undefined };

const isAbandoned = (home: string): boolean => {
  try {
    process.kill(Number(readFileSync(join(home, 'service.lock'), 'utf8').split(' ')[0]), 0);
    return false;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') return true;
    return Date.now() - statSync(home).mtimeMs > 60_000;
  }
};

/** Removes what runs that were killed have left in the temporary folder. */
const sweep = (): void => {
  for (const name of readdirSync(tmpdir())) {
    const home = join(tmpdir(), name);
    if (!name.startsWith(PREFIX)) continue;
    try {
      if (isAbandoned(home)) rmSync(home, { recursive: true, force: true });
    } catch {
      // Another user's folder, or one that goes away just now.
    }
  }
};

const makeTemplate = async (server: EmbeddedServer): Promise<void> => {
  const client = new Client({ connectionString: server.urlOf('postgres') });
  await client.connect();
  await client.query(`CREATE DATABASE ${TEMPLATE}`);
  await client.end();
  await migrate(server.urlOf(TEMPLATE));
};

const start = async (): Promise<TestServer> => {
  sweep();
  const home = mkdtempSync(join(tmpdir(), PREFIX));
  const server = await startEmbeddedServer({ home, durable: false, say: console.info });
  await makeTemplate(server);
  process.env[SERVER_URL_VARIABLE] = server.urlOf('postgres');
  // Interrupted runs must not count as passed.
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.prependListener(signal, () => (process.exitCode = 130));
  }
  return { server, home };
};

export const startTestServer = async (): Promise<void> => {
  store.ballotinTestServer ??= start();
  await store.ballotinTestServer;
};

export const stopTestServer = async (): Promise<void> => {
  const running = store.ballotinTestServer;
  store.ballotinTestServer = undefined;
  if (running === undefined) return;
  const { server, home } = await running;
  await server.stop();
  rmSync(home, { recursive: true, force: true });
};
