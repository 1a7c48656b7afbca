import {
  closeSync,
  existsSync,
  fstatSync,
  openSync,
  readSync,
  renameSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import type { Account } from './account';
import { giveTo } from './cluster';

const LARGEST_BYTES = 10 * 1024 * 1024;
const TAIL_BYTES = 4_000;

/** Makes the log writable for the server's user; a log of 10 MiB becomes the previous one. */
export const openLog = (file: string, account: Account): void => {
  if (existsSync(file) && statSync(file).size > LARGEST_BYTES) renameSync(file, `${file}.1`);
  if (!existsSync(file)) writeFileSync(file, '', { mode: 0o600 });
  giveTo(file, account);
};

export const logLength = (file: string): number => (existsSync(file) ? statSync(file).size : 0);

/** What the server wrote since a position, its last 4,000 bytes at most. */
export const logSince = (file: string, position: number): string => {
  const handle = openSync(file, 'r');
  try {
    const { size } = fstatSync(handle);
    const from = Math.max(position, size - TAIL_BYTES, 0);
    const bytes = Buffer.alloc(Math.max(size - from, 0));
    readSync(handle, bytes, 0, bytes.length, from);
    return bytes.toString('utf8').trim();
  } finally {
    closeSync(handle);
  }
};
