// `npm test`: prepares what the chosen sizes of test need, then hands over to jest.
import { join } from 'node:path';
import { ROOT } from './places.mjs';
import { prepare } from './prepare.mjs';
import { become, failPlainly } from './run.mjs';

const args = process.argv.slice(2);

/** The sizes that start the compiled service, and those that open the web app. */
const SERVICE = ['integration', 'e2e', 'browser'];
const WEB = ['e2e', 'browser'];

const chosen = () => {
  const from = args.indexOf('--selectProjects');
  if (from < 0) return undefined;
  const rest = args.slice(from + 1);
  const end = rest.findIndex((word) => word.startsWith('-'));
  return end < 0 ? rest : rest.slice(0, end);
};

const sizes = chosen();
const needs = (of) => sizes === undefined || sizes.some((size) => of.includes(size));
try {
  await prepare({ service: needs(SERVICE), web: needs(WEB) });
} catch (error) {
  failPlainly(error);
}
const hasWorkers = args.some((word) => /^(-w|-i|--maxWorkers|--runInBand)/.test(word));
become(join(ROOT, 'node_modules', 'jest', 'bin', 'jest.js'), [
  ...args,
  ...(hasWorkers ? [] : ['--maxWorkers=2']),
]);
