// `npm run check:types`: the compiler's opinion of each part, without writing anything.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './places.mjs';
import { prepare } from './prepare.mjs';
import { failPlainly, runNode } from './run.mjs';

const tsc = join(ROOT, 'node_modules', 'typescript', 'bin', 'tsc');
try {
  await prepare({ service: false, web: false });
  for (const part of ['apps/api', 'apps/web', 'test']) {
    if (existsSync(join(ROOT, part, 'tsconfig.json'))) await runNode(tsc, ['-p', part, '--noEmit']);
  }
} catch (error) {
  failPlainly(error);
}
