import { chmodSync, existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { openDatabase } from '@api/platform/embedded-database';
import { findBinaries } from '@api/platform/embedded-database/binaries';
import { ask } from '../../support/database/ask';
import { makeDataFolder } from '../../support/database/data-folder';

jest.setTimeout(120_000);

const asRoot = process.getuid?.() === 0 ? describe : describe.skip;

asRoot('started by root', () => {
  it('keeps the data under /var/lib when the wanted folder is closed to the server', async () => {
    const folder = makeDataFolder();
    chmodSync(folder.path, 0o700);
    const wanted = join(folder.path, 'data');
    const said: string[] = [];
    const { url, close } = await openDatabase({
      dataFolder: wanted,
      say: (line) => said.push(line),
    });
    expect(await ask(url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await close();
    const moved = readFileSync(join(wanted, 'moved-to'), 'utf8').trim();
    expect(moved).toMatch(/^\/var\/lib\/ballotin\/[0-9a-f]{12}$/);
    expect(said.join()).toContain(moved);
    expect(statSync(join(moved, 'cluster')).uid).not.toBe(0);
    expect(statSync(folder.path).mode & 0o777).toBe(0o700);
    rmSync(moved, { recursive: true });
    folder.remove();
  });

  it('copies the binaries beside the data when they are closed to the server', () => {
    const folder = makeDataFolder();
    // Nobody has this id: whatever is not open to everyone is closed to it.
    const stranger = { uid: 65_533, gid: 65_533 };
    const own = findBinaries(folder.path, stranger);
    const packages = join(own.postgres, '../../..');
    const { mode } = statSync(packages);
    chmodSync(packages, 0o700);
    try {
      const copied = findBinaries(folder.path, stranger);
      expect(copied.postgres.startsWith(folder.path)).toBe(true);
      for (const file of Object.values(copied) as string[]) {
        expect(statSync(file).mode & 0o755).toBe(0o755);
      }
      expect(existsSync(join(copied.postgres, '../../lib/libpq.so.5'))).toBe(true);
      expect(findBinaries(folder.path, stranger)).toEqual(copied);
    } finally {
      chmodSync(packages, mode & 0o7777);
      folder.remove();
    }
  });
});
