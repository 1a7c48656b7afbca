import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';

const readProc = (pid: number, file: string): string | undefined => {
  try {
    return readFileSync(`/proc/${String(pid)}/${file}`, 'utf8');
  } catch {
    return undefined;
  }
};

/** Fields 3 on of stat. The name in field 2 may hold blanks, so count from its closing bracket. */
const statFields = (pid: number): string[] | undefined =>
  readProc(pid, 'stat')?.split(') ').at(-1)?.split(' ');

const askPs = (pid: number, column: string): string | undefined => {
  try {
    return execFileSync('ps', ['-o', `${column}=`, '-p', String(pid)], { encoding: 'utf8' }).trim();
  } catch {
    return undefined;
  }
};

/**
 * When the process began, as the system writes it. Process ids are used again; id and beginning
 * together name one process. Undefined where the system does not tell (Windows).
 */
export const processStart = (pid: number): string | undefined => {
  if (process.platform === 'win32') return undefined;
  if (process.platform !== 'linux') return askPs(pid, 'lstart');
  return statFields(pid)?.[19];
};

/** A process that has ended but was not yet collected by its parent still answers signals. */
const isZombie = (pid: number): boolean =>
  process.platform === 'linux' && statFields(pid)?.[0] === 'Z';

/** Whether a process of that id is running, also when it belongs to another user. */
export const isAlive = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return !isZombie(pid);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM' && !isZombie(pid);
  }
};

/** Whether that process runs a program of this name; true where the system does not tell. */
export const runsProgram = (pid: number, name: string): boolean => {
  if (!isAlive(pid)) return false;
  if (process.platform === 'win32') return true;
  const command = process.platform === 'linux' ? readProc(pid, 'comm')?.trim() : askPs(pid, 'comm');
  return command === undefined || basename(command) === name;
};
