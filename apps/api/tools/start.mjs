// `npm start`: brings a fresh clone to a running service with Node and npm alone.
import { join } from 'node:path';
import { API } from './places.mjs';
import { prepare } from './prepare.mjs';
import { become, failPlainly } from './run.mjs';

try {
  await prepare();
} catch (error) {
  failPlainly(error);
}
const demo = process.argv.includes('--demo');
become(join(API, 'dist', demo ? 'prisma/start-demo.js' : 'main.js'), process.argv.slice(2));
