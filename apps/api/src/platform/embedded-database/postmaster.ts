import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Account } from './account';
import type { Binaries } from './binaries';
import type { DataHome } from './data-home';
import { DatabaseStartError } from './database-start-error';
import { runBinary } from './run-binary';
import { logLength, logSince } from './server-log';
import { isAlive, runsProgram } from './system-process';

const START_ROUNDS = 24;
const ROUND_PAUSE_MS = 500;

/** What passes by itself: the remains of a server that was killed a moment ago. */
const PASSING = /lock file "postmaster\.pid" already exists|pre-existing shared memory block/;

/** The process that PostgreSQL wrote into its own lock file. */
export const postmasterPid = (cluster: string): number | undefined => {
  const file = join(cluster, 'postmaster.pid');
  if (!existsSync(file)) return undefined;
  const pid = Number(readFileSync(file, 'utf8').split('\n')[0]);
  return Number.isInteger(pid) && pid > 0 ? pid : undefined;
};

export const stopArguments = (cluster: string): string[] => [
  ...['stop', '-D', cluster, '-m', 'fast', '-w', '-t', '120', '-s'],
];

/**
 * Deals with a server that outlived the service which started it: it is stopped in an orderly way
 * and started afresh. A lock file whose process id now belongs to some other program is removed,
 * because PostgreSQL would take that program for itself and refuse to start for ever.
 */
export const stopOrphan = async (home: DataHome, binaries: Binaries): Promise<void> => {
  const pid = postmasterPid(home.cluster);
  if (pid === undefined || !isAlive(pid)) return;
  if (!runsProgram(pid, 'postgres')) {
    rmSync(join(home.cluster, 'postmaster.pid'), { force: true });
    return;
  }
  const stop = stopArguments(home.cluster);
  const { code, output } = await runBinary(binaries.pgCtl, stop, home.folder, home.account);
  if (code === 0 || !isAlive(pid)) return;
  throw new DatabaseStartError(
    `A database server (process ${String(pid)}) left over from an earlier run does not stop:\n` +
      `${output}\nEnd that process, then start again.`,
  );
};

/** Starts the server and waits until it takes connections; shows its log when it does not. */
export const startPostmaster = async (
  home: DataHome,
  binaries: Binaries,
  onStarting: () => void,
): Promise<number> => {
  const start = ['start', '-D', home.cluster, '-l', home.log, '-w', '-t', '300', '-s'];
  for (let round = 1; ; round += 1) {
    const position = logLength(home.log);
    const running = runBinary(binaries.pgCtl, start, home.folder, home.account);
    onStarting();
    const outcome = await running;
    const pid = postmasterPid(home.cluster);
    if (outcome.code === 0 && pid !== undefined) return pid;
    const log = logSince(home.log, position);
    if (round >= START_ROUNDS || !PASSING.test(log)) {
      throw new DatabaseStartError(
        `The database did not start (its log is ${home.log}):\n${outcome.output}\n${log}`,
      );
    }
    await pause(ROUND_PAUSE_MS);
  }
};

/**
 * A shell that waits for the end of this process and then tells the server to stop: even a service
 * that was killed outright leaves no server behind. It names the process, never the folder, so it
 * cannot hit the server of a service started since. Windows has no such guard; there the next
 * start stops the orphan.
 */
export const guard = (pid: number, account: Account): { dismiss: () => void } => {
  if (process.platform === 'win32') return { dismiss: () => undefined };
  const shell: ChildProcess = spawn('/bin/sh', ['-c', 'read _; kill -INT "$0"', String(pid)], {
    cwd: '/',
    detached: true,
    stdio: ['pipe', 'ignore', 'ignore'],
    ...account,
  });
  shell.on('error', () => undefined);
  shell.unref();
  (shell.stdin as unknown as { unref?: () => void } | null)?.unref?.();
  return { dismiss: () => shell.kill('SIGKILL') };
};
