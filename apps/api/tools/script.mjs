// `node script.mjs <file in apps/api/dist> [arguments]`: a command-line script of the service.
import { join } from 'node:path';
import { API } from './places.mjs';
import { prepare } from './prepare.mjs';
import { become, failPlainly } from './run.mjs';

const [script, ...args] = process.argv.slice(2);
try {
  await prepare({ web: false });
} catch (error) {
  failPlainly(error);
}
become(join(API, 'dist', script), args);
