import { createHash } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Account, isReachable, serverAccount } from './account';
import { DatabaseStartError } from './database-start-error';

/** Where root's data goes when the wanted folder cannot be reached by the server's user. */
const SYSTEM_FOLDER = '/var/lib/ballotin';

export interface DataHome {
  /** Holds everything that belongs to one embedded database. */
  readonly folder: string;
  /** PostgreSQL's own data directory. */
  readonly cluster: string;
  readonly passwordFile: string;
  readonly portFile: string;
  readonly log: string;
  readonly account: Account;
}

const layOut = (folder: string, account: Account): DataHome => ({
  folder,
  cluster: join(folder, 'cluster'),
  passwordFile: join(folder, 'password'),
  portFile: join(folder, 'port'),
  log: join(folder, 'server.log'),
  account,
});

const NOTE = 'moved-to';

/** Where the data of a folder lies, without making or changing anything. */
export const findHome = (named: string): DataHome => {
  const note = join(resolve(named), NOTE);
  return layOut(existsSync(note) ? readFileSync(note, 'utf8').trim() : resolve(named), undefined);
};

const makeFolder = (folder: string): void => {
  mkdirSync(folder, { recursive: true });
  // The server's user passes through here; everything secret inside has its own narrower mode.
  if (process.getuid?.() === 0) chmodSync(folder, 0o755);
};

/** A folder of root's that the server's user can reach, and a note in the wanted one saying so. */
const moveToSystemFolder = (wanted: string, note: string): string => {
  const name = createHash('sha256').update(wanted).digest('hex').slice(0, 12);
  const folder = join(SYSTEM_FOLDER, name);
  makeFolder(folder);
  writeFileSync(note, `${folder}\n`);
  return folder;
};

const refuseForeignCluster = (home: DataHome): void => {
  if (process.getuid?.() === 0 || !existsSync(home.folder)) return;
  try {
    if (existsSync(home.cluster)) readFileSync(join(home.cluster, 'PG_VERSION'));
  } catch {
    throw new DatabaseStartError(
      `The data in ${home.cluster} belongs to another user: the service was started there by ` +
        'root. Start it as root again, or change the owner of the whole folder to yourself.',
    );
  }
};

/**
 * The folder of the embedded database. Started by root inside a closed home folder, the server's
 * user could not reach it; the data then lives under /var/lib, with a note where it was wanted.
 */
export const settleHome = (named: string, say: (line: string) => void): DataHome => {
  const wanted = resolve(named);
  const note = join(wanted, NOTE);
  const account = serverAccount(join(wanted, 'cluster'));
  if (account === undefined) {
    if (existsSync(note)) {
      throw new DatabaseStartError(
        `The data of ${wanted} lies in ${readFileSync(note, 'utf8').trim()}, because the ` +
          'service was started by root. Start it as root again.',
      );
    }
    makeFolder(wanted);
    const home = layOut(wanted, account);
    refuseForeignCluster(home);
    return home;
  }
  makeFolder(wanted);
  if (isReachable(wanted, account)) return layOut(wanted, account);
  const folder = moveToSystemFolder(wanted, note);
  say(`PostgreSQL does not run as root and cannot reach ${wanted}; its data is in ${folder}.`);
  return layOut(folder, serverAccount(join(folder, 'cluster')));
};
