import { existsSync, readFileSync } from 'node:fs';
import { databaseUrl } from './cluster';
import { findHome } from './data-home';
import { isLocked } from './folder-lock';
import { DATABASE_NAME, type DatabaseConfig } from './open-database';

/**
 * The embedded database of a service that is running now, for tools that only connect to it.
 * Undefined when none is running, and with an external database.
 */
export const runningDatabaseUrl = (config: DatabaseConfig): string | undefined => {
  if (config.databaseUrl !== undefined && config.databaseUrl !== '') return undefined;
  const home = findHome(config.dataFolder);
  const ready = [home.portFile, home.passwordFile].every((file) => existsSync(file));
  if (!ready || !isLocked(home.folder)) return undefined;
  const password = readFileSync(home.passwordFile, 'utf8').trim();
  return databaseUrl(password, Number(readFileSync(home.portFile, 'utf8')), DATABASE_NAME);
};
