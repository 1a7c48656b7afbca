import 'reflect-metadata';
import { writeFileSync } from 'node:fs';
import { createApp } from './app.factory';
import { openApiDocument } from './app.setup';
import { readConfig } from './platform/config/config';

// `node dist/openapi.js <file>`: writes the OpenAPI document. The app is put together but never
// started, so no database is asked for anything; the address is only there to be parsed.
const NO_DATABASE = 'postgresql://nobody@127.0.0.1:1/nothing';

const write = async (file: string): Promise<void> => {
  const app = await createApp(readConfig({ LOG_LEVEL: 'silent' }), NO_DATABASE);
  writeFileSync(file, `${JSON.stringify(openApiDocument(app), null, 2)}\n`);
  await app.close();
};

const [, , file] = process.argv;
if (file === undefined) throw new Error('say where to write the document');
void write(file);
