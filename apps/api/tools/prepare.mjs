import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled } from './install.mjs';
import { API, ROOT, WEB } from './places.mjs';
import { runNode } from './run.mjs';
import { filesBelow, forget, hashOfTexts, hashOfTimes, onceFor } from './stamps.mjs';

const PACKAGES = join(ROOT, 'node_modules');
const SCHEMA = join(ROOT, 'prisma', 'schema.prisma');
const CLIENT = join(API, 'src', 'generated', 'prisma');

/**
 * Generates the database client. Prisma wants its native schema engine to exist before any
 * command, and cannot download it everywhere; `generate` does not use it, so any executable
 * will do. The variable is set for this one call, as `prisma migrate` would run that program.
 */
export const generateClient = () =>
  runNode(join(PACKAGES, 'prisma', 'build', 'index.js'), ['generate', '--schema', SCHEMA], {
    env: {
      PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
      PRISMA_HIDE_UPDATE_MESSAGE: '1',
      CHECKPOINT_DISABLE: '1',
    },
  });

const ensureClient = async () => {
  const { version } = JSON.parse(readFileSync(join(PACKAGES, 'prisma', 'package.json'), 'utf8'));
  const key = hashOfTexts(readFileSync(SCHEMA, 'utf8'), version);
  if (!existsSync(CLIENT)) forget('client');
  await onceFor('client', key, generateClient);
};

const buildWeb = async () => {
  if (!existsSync(join(WEB, 'index.html'))) return;
  const skip = (name) => name === 'dist' || name === 'node_modules';
  const files = filesBelow(WEB, (file) => !/\.spec\.tsx?$/.test(file), skip);
  if (!existsSync(join(WEB, 'dist', 'index.html'))) forget('web');
  await onceFor('web', hashOfTimes(files), async () => {
    console.info('Building the web app ...');
    const vite = join(PACKAGES, 'vite', 'bin', 'vite.js');
    await runNode(vite, ['build', '--logLevel', 'warn'], { cwd: WEB });
  });
};

/** Brings the working copy to where the service can run: packages, client, dist, web app. */
export const prepare = async ({ service = true, web = true } = {}) => {
  await ensureInstalled();
  await ensureClient();
  if (service) {
    const { compile } = await import('./compile.mjs');
    await compile();
  }
  if (web) await buildWeb();
};
