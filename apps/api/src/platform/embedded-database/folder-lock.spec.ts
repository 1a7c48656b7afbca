import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isLocked, lockFolder } from './folder-lock';
import { processStart } from './system-process';

let folder: string;
const file = (): string => join(folder, 'service.lock');

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballotin-lock-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

/** No process has an id this large. */
const NOBODY = 2 ** 30;

describe('the lock of a data folder', () => {
  it('is held by one service at a time', () => {
    const lock = lockFolder(folder);
    expect(isLocked(folder)).toBe(true);
    expect(() => lockFolder(folder)).toThrow(
      `Another Ballotin service (process ${String(process.pid)}) already uses the data folder`,
    );
    lock.release();
    expect(isLocked(folder)).toBe(false);
    lockFolder(folder).release();
    expect(existsSync(file())).toBe(false);
  });

  it('is taken over from a service that is gone', () => {
    writeFileSync(file(), `${String(NOBODY)} 12345`);
    const lock = lockFolder(folder);
    expect(readFileSync(file(), 'utf8')).toContain(String(process.pid));
    lock.release();
  });

  it('is taken over when another program has got the process id since', () => {
    writeFileSync(file(), `${String(process.pid)} long ago`);
    expect(isLocked(folder)).toBe(processStart(process.pid) === undefined);
    lockFolder(folder).release();
  });

  it('is taken over when its file was cut off', () => {
    for (const text of ['', 'nonsense', '-5 1', '0 1']) {
      writeFileSync(file(), text);
      lockFolder(folder).release();
    }
  });

  it('is not released by somebody who no longer holds it', () => {
    const lock = lockFolder(folder);
    writeFileSync(file(), `${String(NOBODY)} 1`);
    lock.release();
    expect(existsSync(file())).toBe(true);
  });
});
