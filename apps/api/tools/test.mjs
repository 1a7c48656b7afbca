// `npm test [sizes] [jest's arguments]`: prepares what the chosen sizes of test need, then hands
// over to jest. Without a size all of them run.
import { join } from 'node:path';
import { ROOT } from './places.mjs';
import { prepare } from './prepare.mjs';
import { become, failPlainly } from './run.mjs';

/** Each size of test, with the parts that have to be built for it. */
const SIZES = {
  unit: {},
  reference: {},
  architecture: {},
  integration: { service: true },
  property: {},
  e2e: { service: true, web: true },
  browser: { service: true, web: true },
};

const args = process.argv.slice(2);
const sizes = args.filter((word) => word in SIZES);
const rest = args.filter((word) => !(word in SIZES));
const chosen = sizes.length === 0 ? Object.keys(SIZES) : sizes;
const needed = chosen.map((size) => SIZES[size]);

try {
  await prepare({
    service: needed.some(({ service }) => service),
    web: needed.some(({ web }) => web),
  });
} catch (error) {
  failPlainly(error);
}

const workersGiven = rest.some((word) => /^(-w|-i|--maxWorkers|--runInBand)/.test(word));
become(join(ROOT, 'node_modules', 'jest', 'bin', 'jest.js'), [
  ...rest,
  ...(workersGiven ? [] : ['--maxWorkers=2']),
  // Last, because the option takes every word that follows it.
  '--selectProjects',
  ...chosen,
]);
