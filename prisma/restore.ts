// `npm run restore -- <file>`: puts a backup into an empty database and compares it.
import { restoreFromCommandLine } from '../apps/api/src/platform/backup/command-line';

void restoreFromCommandLine();
