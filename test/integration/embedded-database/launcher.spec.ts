import { once } from 'node:events';
import { appendFileSync, cpSync, existsSync, mkdirSync } from 'node:fs';
import { readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { join } from 'node:path';
import { openDatabase, runningDatabaseUrl } from '@api/platform/embedded-database';
import { serverAccount } from '@api/platform/embedded-database/account';
import { findBinaries } from '@api/platform/embedded-database/binaries';
import { postmasterPid } from '@api/platform/embedded-database/postmaster';
import { runBinary } from '@api/platform/embedded-database/run-binary';
import { isAlive } from '@api/platform/embedded-database/system-process';
import { ask } from '../../support/database/ask';
import { makeDataFolder } from '../../support/database/data-folder';

jest.setTimeout(120_000);

const folder = makeDataFolder();
const home = join(folder.path, 'data');
const cluster = join(home, 'cluster');
const said: string[] = [];
const open = () => openDatabase({ dataFolder: home, say: (line) => said.push(line) });

afterAll(() => folder.remove());

const until = async (what: () => boolean): Promise<void> => {
  for (let round = 0; round < 300 && !what(); round += 1) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  expect(what()).toBe(true);
};

const settings = async (url: string): Promise<Record<string, string>> => {
  const rows = await ask<{ name: string; setting: string }>(
    url,
    'SELECT name, setting FROM pg_settings',
  );
  return Object.fromEntries(rows.map(({ name, setting }) => [name, setting]));
};

/** Starts a server on the folder behind the launcher's back, as a killed service leaves one. */
const leaveOrphan = async (): Promise<number> => {
  const account = serverAccount(cluster);
  const { pgCtl } = findBinaries(home, account);
  const start = ['start', '-w', '-s', '-D', cluster, '-l', join(home, 'server.log')];
  expect((await runBinary(pgCtl, start, home, account)).code).toBe(0);
  return postmasterPid(cluster) ?? 0;
};

describe('the embedded database', () => {
  it('is made at the first start: safe settings, on this machine only, behind a password', async () => {
    const { url, close } = await open();
    expect(await settings(url)).toMatchObject({
      fsync: 'on',
      full_page_writes: 'on',
      synchronous_commit: 'on',
      data_checksums: 'on',
      listen_addresses: '127.0.0.1',
      unix_socket_directories: '',
      server_encoding: 'UTF8',
      TimeZone: 'UTC',
    });
    const [locale] = await ask(url, 'SELECT datcollate FROM pg_database WHERE datname = $1', [
      'ballotin',
    ]);
    expect(locale).toEqual({ datcollate: 'C' });
    const guessed = new URL(url);
    guessed.password = 'guess';
    await expect(ask(guessed.href, 'SELECT 1')).rejects.toMatchObject({ code: '28P01' });
    expect(statSync(join(home, 'password')).mode & 0o777).toBe(0o600);
    expect(statSync(cluster).mode & 0o077).toBe(0);
    expect(existsSync(join(home, 'password.initdb'))).toBe(false);
    await ask(url, 'CREATE TABLE kept (id int); INSERT INTO kept VALUES (1)');
    await close();
  });

  it('keeps data and port over a stop and a start, and leaves no process and no lock', async () => {
    const port = readFileSync(join(home, 'port'), 'utf8');
    const { url, close } = await open();
    expect(new URL(url).port).toBe(port);
    expect(await ask(url, 'SELECT id FROM kept')).toEqual([{ id: 1 }]);
    const pid = postmasterPid(cluster) ?? 0;
    expect(isAlive(pid)).toBe(true);
    await close();
    await until(() => !isAlive(pid));
    expect(existsSync(join(home, 'service.lock'))).toBe(false);
    expect(existsSync(join(cluster, 'postmaster.pid'))).toBe(false);
  });

  it('is refused to a second service, and the first goes on', async () => {
    const { url, close } = await open();
    await expect(open()).rejects.toThrow(/Another Ballotin service \(process \d+\) already uses/);
    expect(await ask(url, 'SELECT id FROM kept')).toEqual([{ id: 1 }]);
    await close();
  });

  it('tells tools its address while it runs, and not otherwise', async () => {
    expect(runningDatabaseUrl({ dataFolder: home })).toBeUndefined();
    const { url, close } = await open();
    expect(runningDatabaseUrl({ dataFolder: home })).toBe(url);
    expect(runningDatabaseUrl({ dataFolder: home, databaseUrl: url })).toBeUndefined();
    await close();
  });

  it('never runs as root', async () => {
    const { close } = await open();
    const pid = postmasterPid(cluster) ?? 0;
    if (process.platform === 'linux') expect(statSync(`/proc/${String(pid)}`).uid).not.toBe(0);
    await close();
  });

  it('takes another port when its own is taken, and remembers that one', async () => {
    const taken = createServer().listen(0, '127.0.0.1');
    await once(taken, 'listening');
    for (const port of [(taken.address() as AddressInfo).port, 1, 0, 'nonsense']) {
      writeFileSync(join(home, 'port'), String(port));
      const { url, close } = await open();
      expect(new URL(url).port).not.toBe(String(port));
      expect(readFileSync(join(home, 'port'), 'utf8')).toBe(new URL(url).port);
      await close();
    }
    taken.close();
  });
});

describe('after a crash', () => {
  it('a server that outlived its service is stopped and started afresh', async () => {
    const orphan = await leaveOrphan();
    expect(isAlive(orphan)).toBe(true);
    const { url, close } = await open();
    expect(isAlive(orphan)).toBe(false);
    expect(postmasterPid(cluster)).not.toBe(orphan);
    expect(await ask(url, 'SELECT id FROM kept')).toEqual([{ id: 1 }]);
    await close();
  });

  it('a lock file of a server that is gone does not stand in the way', async () => {
    const lines = [String(2 ** 22 - 1), cluster, '1', '5432', '', '127.0.0.1', '0 0', 'ready'];
    writeFileSync(join(cluster, 'postmaster.pid'), `${lines.join('\n')}\n`);
    await (await open()).close();
  });

  it('a lock file whose process id some other program has now does not either', async () => {
    const lines = [String(process.pid), cluster, '1', '5432', '', '127.0.0.1', '0 0', 'ready'];
    writeFileSync(join(cluster, 'postmaster.pid'), `${lines.join('\n')}\n`);
    await (await open()).close();
  });

  it('a server that is killed is started again at the same address, by itself', async () => {
    const { url, close } = await open();
    await ask(url, 'INSERT INTO kept VALUES (2)');
    const killed = postmasterPid(cluster) ?? 0;
    said.length = 0;
    process.kill(killed, 'SIGKILL');
    await until(() => said.includes('The database is back.'));
    expect(postmasterPid(cluster)).not.toBe(killed);
    expect(await ask(url, 'SELECT id FROM kept ORDER BY id')).toEqual([{ id: 1 }, { id: 2 }]);
    await close();
  });

  it('a cluster that was half made is made anew', async () => {
    const other = join(folder.path, 'half');
    mkdirSync(join(other, 'cluster.partial', 'base'), { recursive: true });
    writeFileSync(join(other, 'cluster.partial', 'PG_VERSION'), '18\n');
    const { url, close } = await openDatabase({ dataFolder: other, say: () => undefined });
    expect(await ask(url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await close();
    expect(readdirSync(other)).not.toContain('cluster.partial');
    rmSync(other, { recursive: true });
  });
});

describe('what cannot be started', () => {
  it('shows the words of the server itself, and lets the folder go', async () => {
    const file = join(cluster, 'postgresql.conf');
    const before = readFileSync(file);
    appendFileSync(file, "nonsense_of_a_setting = 'on'\n");
    await expect(open()).rejects.toThrow(/did not start[\s\S]*nonsense_of_a_setting/);
    writeFileSync(file, before);
    await (await open()).close();
  });

  it('of another version says which, and what to do', async () => {
    const other = join(folder.path, 'older');
    mkdirSync(other);
    cpSync(cluster, join(other, 'cluster'), { recursive: true });
    writeFileSync(join(other, 'cluster', 'PG_VERSION'), '16\n');
    await expect(openDatabase({ dataFolder: other, say: () => undefined })).rejects.toThrow(
      /is of PostgreSQL 16, the program brings \d+\. Back it up/,
    );
    rmSync(other, { recursive: true });
  });
});
