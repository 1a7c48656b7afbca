import { readConfig } from '../config/config';
import { openDatabase, runningDatabaseUrl } from '../embedded-database';
import { shutDown } from '../shutdown';
import { RULES } from './faults.queries';
import { verifyDatabase } from './verify-database';

/** `npm run verify`: names every fault of the environment's database; ends with 1 when there is one. */
export const verifyFromCommandLine = async (): Promise<void> => {
  try {
    const config = readConfig(process.env);
    const url = runningDatabaseUrl(config) ?? (await openDatabase(config)).url;
    const faults = await verifyDatabase(url);
    for (const fault of faults) {
      console.error(`${fault.rule}: ${fault.subject}: ${fault.detail}\n  ${fault.meaning}`);
    }
    if (faults.length === 0) {
      console.info(`No fault found by ${String(RULES.length + 1)} rules.`);
    } else process.exitCode = 1;
  } catch (error) {
    process.exitCode = 1;
    console.error(error instanceof Error ? error.message : error);
  } finally {
    await shutDown();
  }
};
