import { readConfig } from '../config/config';
import { openDatabase } from '../embedded-database';
import { shutDown } from '../shutdown';
import { migrate } from './migrate';

/** Opens the database of the environment, applies what is missing and closes it again. */
export const migrateFromCommandLine = async (): Promise<void> => {
  try {
    const { url } = await openDatabase(readConfig(process.env));
    const applied = await migrate(url);
    const list = applied.map((name) => `\n  ${name}`).join('');
    console.info(applied.length === 0 ? 'The database is up to date.' : `Applied:${list}`);
  } catch (error) {
    process.exitCode = 1;
    console.error(error instanceof Error ? error.message : error);
  } finally {
    await shutDown();
  }
};
