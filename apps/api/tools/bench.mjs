// `npm run bench [jest's arguments]`: prints how fast traces and bookings are, beside the floor that
// the database alone sets, and how they grow; BENCH_DRAWS=100000 asks for one size of shop only.
import { join } from 'node:path';
import { ROOT } from './places.mjs';
import { prepare } from './prepare.mjs';
import { become, failPlainly } from './run.mjs';

try {
  await prepare({ web: false });
} catch (error) {
  failPlainly(error);
}
process.env['BENCH'] = '1';
become(join(ROOT, 'node_modules', 'jest', 'bin', 'jest.js'), [
  ...process.argv.slice(2),
  '--runInBand',
  '--selectProjects',
  'bench',
]);
