import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './places.mjs';
import { run, runNode } from './run.mjs';

const readLock = (file) =>
  existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {};

/**
 * Whether node_modules holds what the lock file asks for. npm writes what it has installed into
 * node_modules/.package-lock.json; comparing versions is exact where comparing times would
 * install again after every checkout.
 */
export const isInstalled = () => {
  const wanted = readLock(join(ROOT, 'package-lock.json'));
  const found = readLock(join(ROOT, 'node_modules', '.package-lock.json'));
  return Object.entries(wanted).every(([path, { version, link, optional, devOptional }]) => {
    if (!path.startsWith('node_modules/') || link) return true;
    const present = found[path];
    // Optional packages of other machines are rightly absent.
    if (present === undefined) return Boolean(optional ?? devOptional);
    return present.version === version;
  });
};

const npmCi = ['ci', '--no-audit', '--no-fund', '--include=dev', '--include=optional'];

export const ensureInstalled = async () => {
  if (isInstalled()) return;
  console.info('Installing the packages of package-lock.json (the first time takes a minute) ...');
  // Under `npm start` npm names its own script; otherwise it is found on the path.
  const npm = process.env.npm_execpath;
  if (npm?.endsWith('.js')) await runNode(npm, npmCi);
  else await run('npm', npmCi, { shell: process.platform === 'win32' });
};
