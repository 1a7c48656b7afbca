import { spawn, spawnSync } from 'node:child_process';
import type { Account } from './account';

export interface BinaryOutcome {
  readonly code: number | null;
  readonly output: string;
}

/** How long the last words of a program that has ended are waited for. */
const PIPES_MS = process.platform === 'win32' ? 200 : 5_000;

const MIB = 1024 * 1024;

/**
 * Memory that a query gave back is kept for the next one. Else glibc hands it to the system and asks
 * for it anew each time, and a walk through the graph of lots takes twice as long.
 */
const KEPT_MEMORY = {
  MALLOC_TRIM_THRESHOLD_: String(32 * MIB),
  MALLOC_MMAP_THRESHOLD_: String(32 * MIB),
  MALLOC_TOP_PAD_: String(MIB),
};

/** A bare environment: nothing of the caller's (PGDATA, PGPORT, LANG ...) reaches the binaries. */
const environment = (): NodeJS.ProcessEnv => {
  const { PATH, SystemRoot, TEMP, TMP } = process.env;
  return {
    LC_ALL: 'C',
    TZ: 'UTC',
    ...KEPT_MEMORY,
    ...(PATH !== undefined && { PATH }),
    ...(SystemRoot !== undefined && { SystemRoot }),
    ...(TEMP !== undefined && { TEMP }),
    ...(TMP !== undefined && { TMP }),
  };
};

const options = (cwd: string, account: Account) => ({
  cwd,
  env: environment(),
  windowsHide: true,
  ...account,
});

/** Runs one binary to its end. `cwd` must be reachable by the account. */
export const runBinary = (
  file: string,
  args: readonly string[],
  cwd: string,
  account: Account,
): Promise<BinaryOutcome> =>
  new Promise((resolve, reject) => {
    const child = spawn(file, args, {
      ...options(cwd, account),
      stdio: ['ignore', 'pipe', 'pipe'],
      // Its own process group: Ctrl-C in the terminal reaches the service, which stops in order.
      detached: process.platform !== 'win32',
    });
    const chunks: Buffer[] = [];
    child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => chunks.push(chunk));
    child.on('error', reject);
    const finish = (code: number | null): void => {
      resolve({ code, output: Buffer.concat(chunks).toString('utf8').trim() });
    };
    child.on('close', finish);
    // On Windows a server that pg_ctl has started keeps the pipes open; don't wait for their end.
    child.on('exit', (code) => setTimeout(() => finish(code), PIPES_MS).unref());
  });

/** The same while the process is exiting, when nothing asynchronous runs any more. */
export const runBinaryNow = (
  file: string,
  args: readonly string[],
  cwd: string,
  account: Account,
): void => {
  spawnSync(file, args, { ...options(cwd, account), stdio: 'ignore', timeout: 30_000 });
};
