// `npm run backup -- <file>`: saves the whole database as of this moment into one file.
import { backupFromCommandLine } from '../apps/api/src/platform/backup/command-line';

void backupFromCommandLine();
