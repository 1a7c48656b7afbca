import { join, resolve } from 'node:path';
import { repositoryRoot } from '../places/repository-root';
import type { DatabaseConfig } from './open-database';

/**
 * DATABASE_URL names an external PostgreSQL. BALLOTIN_DATA names the folder of the embedded one,
 * `.data/postgres` beside the program when it is not set.
 */
export const databaseConfigFromEnv = (env: NodeJS.ProcessEnv): DatabaseConfig => ({
  databaseUrl: env['DATABASE_URL'],
  dataFolder:
    env['BALLOTIN_DATA'] === undefined || env['BALLOTIN_DATA'] === ''
      ? join(repositoryRoot(), '.data', 'postgres')
      : resolve(env['BALLOTIN_DATA']),
});
