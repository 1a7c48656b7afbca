// `npm run generate`: the database client, the OpenAPI document and the web app's types of it.
import { join } from 'node:path';
import { compile } from './compile.mjs';
import { API, ROOT, WEB } from './places.mjs';
import { generateClient } from './prepare.mjs';
import { failPlainly, runNode } from './run.mjs';

const DOCUMENT = join(WEB, 'src', 'api', 'openapi.json');
const TYPES = join(WEB, 'src', 'api', 'schema.d.ts');
const typescript = join(ROOT, 'node_modules', 'openapi-typescript', 'bin', 'cli.js');

try {
  await generateClient();
  await compile();
  await runNode(join(API, 'dist', 'openapi.js'), [DOCUMENT]);
  await runNode(typescript, [DOCUMENT, '-o', TYPES]);
} catch (error) {
  failPlainly(error);
}
