import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface DataFolder {
  readonly path: string;
  readonly remove: () => void;
}

/** A folder for embedded databases, open to the user under which root's server runs. */
export const makeDataFolder = (): DataFolder => {
  const path = mkdtempSync(join(tmpdir(), 'ballotin-data-'));
  chmodSync(path, 0o755);
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
};
