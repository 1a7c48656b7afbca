// `npm run check:budget`: the script that a first view of Today needs, compressed, against its
// budget. Reads the manifest of the build; fails when the budget is passed.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const BUDGET_BYTES = 200 * 1000;
const FIRST_VIEW = ['index.html', 'src/features/today/today.tsx'];

const dist = join(dirname(fileURLToPath(import.meta.url)), '..', 'dist');
const manifest = JSON.parse(readFileSync(join(dist, '.vite', 'manifest.json'), 'utf8'));

const chunks = new Set();
const follow = (key) => {
  const chunk = manifest[key];
  if (chunk === undefined) throw new Error(`the build has no ${key}`);
  if (chunks.has(chunk.file)) return;
  chunks.add(chunk.file);
  for (const next of chunk.imports ?? []) follow(next);
};
FIRST_VIEW.forEach(follow);

const sizes = [...chunks].map((file) => [file, gzipSync(readFileSync(join(dist, file))).length]);
const total = sizes.reduce((sum, [, bytes]) => sum + bytes, 0);
for (const [file, bytes] of sizes.sort((a, b) => b[1] - a[1])) {
  process.stdout.write(`${String(bytes).padStart(8)}  ${file}\n`);
}
process.stdout.write(`${String(total).padStart(8)}  of ${String(BUDGET_BYTES)} bytes\n`);
if (total > BUDGET_BYTES) {
  process.stderr.write('The first view is over its budget.\n');
  process.exitCode = 1;
}
