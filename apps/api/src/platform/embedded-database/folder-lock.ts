import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseStartError } from './database-start-error';
import { isAlive, processStart } from './system-process';

interface Owner {
  readonly pid: number;
  readonly start: string | undefined;
}

const lockFile = (folder: string): string => join(folder, 'service.lock');

const readOwner = (file: string): { text: string; owner: Owner } | undefined => {
  try {
    const text = readFileSync(file, 'utf8');
    const [pid, start] = text.trim().split(' ');
    return { text, owner: { pid: Number(pid), start } };
  } catch {
    return undefined;
  }
};

const isHeld = ({ pid, start }: Owner): boolean =>
  Number.isInteger(pid) &&
  pid > 0 &&
  isAlive(pid) &&
  (start === undefined || start === processStart(pid));

/** Takes a lock away whose owner is gone; puts it back when someone else was quicker. */
const clearStale = (file: string, seen: string): void => {
  const aside = `${file}.${String(process.pid)}`;
  try {
    renameSync(file, aside);
    if (readFileSync(aside, 'utf8') !== seen) linkSync(aside, file);
  } catch {
    // Another start has taken it away or written a new one: the next round sees that one.
  }
  rmSync(aside, { force: true });
};

const refusal = (folder: string, pid: number): DatabaseStartError =>
  new DatabaseStartError(
    `Another Ballotin service (process ${String(pid)}) already uses the data folder ${folder}. ` +
      'Stop that one first, or give this one its own folder with BALLOTIN_DATA.',
  );

/**
 * Makes this process the only service on a data folder, until `release` is called or the process
 * is gone. PostgreSQL itself refuses a second server; this lock also refuses a second service that
 * would stop the first one's server as an orphan.
 */
export const lockFolder = (folder: string): { release: () => void } => {
  const file = lockFile(folder);
  const mine = `${String(process.pid)} ${processStart(process.pid) ?? ''}`.trim();
  for (let round = 0; round < 10; round += 1) {
    try {
      writeFileSync(file, mine, { flag: 'wx', mode: 0o644 });
      return { release: () => readOwner(file)?.text === mine && rmSync(file, { force: true }) };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const found = readOwner(file);
    if (found === undefined) continue;
    if (isHeld(found.owner)) throw refusal(folder, found.owner.pid);
    clearStale(file, found.text);
  }
  throw new DatabaseStartError(`The lock ${file} could not be taken. Remove it and start again.`);
};

/** Whether some other process has the folder. */
export const isLocked = (folder: string): boolean => {
  const found = readOwner(lockFile(folder));
  return found !== undefined && isHeld(found.owner);
};
