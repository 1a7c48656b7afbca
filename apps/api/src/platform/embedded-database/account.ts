import { execFileSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseStartError } from './database-start-error';

/** The unprivileged user under which the binaries run; undefined means this process's own user. */
export type Account = { readonly uid: number; readonly gid: number } | undefined;

const lookUp = (name: string): Account => {
  const ask = (flag: string): number =>
    Number(
      execFileSync('id', [flag, name], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }),
    );
  try {
    return { uid: ask('-u'), gid: ask('-g') };
  } catch {
    return undefined;
  }
};

/**
 * PostgreSQL refuses to run as root. Started by root, its binaries run as the owner of the cluster
 * that is already there, else as a user that the machine already has; no user is ever made.
 */
export const serverAccount = (clusterFolder: string): Account => {
  if (process.getuid?.() !== 0) return undefined;
  if (existsSync(clusterFolder)) {
    const { uid, gid } = statSync(clusterFolder);
    if (uid !== 0) return { uid, gid };
  }
  const account = lookUp('postgres') ?? lookUp('nobody');
  if (account === undefined || account.uid === 0) {
    throw new DatabaseStartError(
      'PostgreSQL does not run as root, and this machine has neither a user `postgres` nor ' +
        '`nobody`. Start the service as an ordinary user, or set DATABASE_URL.',
    );
  }
  return account;
};

/** Read (4) and search (1) rights of the account on one existing file or folder. */
const allows = (path: string, account: NonNullable<Account>, rights: number): boolean => {
  const { mode, uid, gid } = statSync(path);
  const shift = uid === account.uid ? 6 : gid === account.gid ? 3 : 0;
  return ((mode >> shift) & rights) === rights;
};

/** Whether the account can get to a path; parts that do not exist yet are left out. */
export const isReachable = (path: string, account: Account): boolean => {
  if (account === undefined) return true;
  let folder = path;
  if (existsSync(path) && !allows(path, account, 0o5)) return false;
  while (folder !== dirname(folder)) {
    folder = dirname(folder);
    if (existsSync(folder) && !allows(folder, account, 0o1)) return false;
  }
  return true;
};
