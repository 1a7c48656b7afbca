// `npm run migrate`: brings the database that the environment names up to date, and stops.
import { migrateFromCommandLine } from '../apps/api/src/platform/migrations/command-line';

void migrateFromCommandLine();
