import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isReachable } from './account';

const STRANGER = { uid: 65_533, gid: 65_533 };

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballotin-account-'));
  chmodSync(folder, 0o755);
  mkdirSync(join(folder, 'inner'), { mode: 0o755 });
  writeFileSync(join(folder, 'inner', 'postgres'), '', { mode: 0o755 });
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe('what the user of the server can reach', () => {
  const program = (): string => join(folder, 'inner', 'postgres');

  it('is what is open all the way down', () => {
    expect(isReachable(program(), STRANGER)).toBe(true);
    expect(isReachable(join(folder, 'inner', 'not', 'there', 'yet'), STRANGER)).toBe(true);
  });

  it('ends at a folder that is closed to others', () => {
    chmodSync(folder, 0o700);
    expect(isReachable(program(), STRANGER)).toBe(false);
    expect(isReachable(join(folder, 'not there yet'), STRANGER)).toBe(false);
  });

  it('ends at a program that may not be run', () => {
    chmodSync(program(), 0o744);
    expect(isReachable(program(), STRANGER)).toBe(false);
  });

  it('is not asked for our own user', () => {
    chmodSync(folder, 0o700);
    expect(isReachable(program(), undefined)).toBe(true);
  });
});
