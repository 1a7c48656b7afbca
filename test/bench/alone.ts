import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

/**
 * Runs a script of the folder `alone` in a plain process: inside the test runner every look at a
 * global is slow, which would clock the runner. It reads JSON and writes JSON.
 */
export const alone = (script: string, input: object): unknown => {
  const written = execFileSync(process.execPath, [join(__dirname, 'alone', `${script}.mjs`)], {
    input: JSON.stringify(input),
    encoding: 'utf8',
    stdio: ['pipe', 'pipe', 'inherit'],
    maxBuffer: 1e9,
  });
  return JSON.parse(written) as unknown;
};
