import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { API, ROOT } from './places.mjs';
import { filesBelow, hashOfTexts, onceFor } from './stamps.mjs';

const SOURCE = join(API, 'src');
const SCRIPTS = join(ROOT, 'prisma');
const TARGET = join(API, 'dist');
const COMPILER = join(ROOT, 'node_modules', '@swc', 'core');
const isTypes = (file) => file.endsWith('.d.ts');
const isTest = (file) => file.endsWith('.spec.ts');

/** Source file and compiled file: `src/x.ts` → `dist/x.js`, `prisma/x.ts` → `dist/prisma/x.js`. */
const jobs = () => {
  const place = (file) =>
    file.startsWith(SOURCE)
      ? join(TARGET, relative(SOURCE, file))
      : join(TARGET, 'prisma', relative(SCRIPTS, file));
  const isScript = (file) => file.endsWith('.ts');
  const notMigrations = (name) => name === 'migrations';
  const sources = [...filesBelow(SOURCE), ...filesBelow(SCRIPTS, isScript, notMigrations)];
  return sources
    .filter((file) => !isTypes(file) && !isTest(file))
    .map((source) => ({ source, target: place(source).replace(/\.ts$/, '.js') }));
};

/** A compiled file carries the time of its source, so an older source counts as changed too. */
const isCurrent = ({ source, target }) => {
  const compiled = statSync(target, { throwIfNoEntry: false });
  // A time set in seconds comes back a hair below the millisecond that was meant.
  return (
    compiled !== undefined && Math.round(compiled.mtimeMs) === Math.trunc(statSync(source).mtimeMs)
  );
};

const stampTime = ({ source, target }) => {
  const seconds = Math.trunc(statSync(source).mtimeMs) / 1000;
  utimesSync(target, seconds, seconds);
};

/** Written aside and renamed: a service that starts meanwhile never reads half a file. */
const writeWhole = (file, text) => {
  const aside = `${file}.${process.pid}`;
  writeFileSync(aside, text);
  renameSync(aside, file);
};

const compileOne = (swc, options, { source, target }) => {
  mkdirSync(dirname(target), { recursive: true });
  if (!source.endsWith('.ts')) {
    copyFileSync(source, target);
    return;
  }
  const { code, map } = swc.transformSync(readFileSync(source, 'utf8'), {
    ...options,
    filename: source,
    sourceFileName: relative(dirname(target), source),
  });
  // Scripts in prisma/ reach the service's code by its place in the source tree.
  const placed = source.startsWith(SCRIPTS)
    ? code.replaceAll(/"((?:\.\.\/)+)apps\/api\/src\//g, '"$1')
    : code;
  const name = `${target.split(/[\\/]/).at(-1)}.map`;
  if (map !== undefined) writeWhole(`${target}.map`, map);
  writeWhole(target, map === undefined ? placed : `${placed}\n//# sourceMappingURL=${name}\n`);
};

const removeStrays = (all) => {
  if (!existsSync(TARGET)) return;
  const wanted = new Set(all.flatMap(({ target }) => [target, `${target}.map`]));
  for (const file of filesBelow(TARGET)) if (!wanted.has(file)) rmSync(file, { force: true });
};

/** Compiles the service to apps/api/dist, only the files that changed. */
export const compile = async () => {
  const options = JSON.parse(readFileSync(join(API, '.swcrc'), 'utf8'));
  delete options.$schema;
  const { version } = JSON.parse(readFileSync(join(COMPILER, 'package.json'), 'utf8'));
  const tool = readFileSync(new URL(import.meta.url), 'utf8');
  const key = hashOfTexts(JSON.stringify(options), version, tool);
  await onceFor('compiler', key, () => rmSync(TARGET, { recursive: true, force: true }));
  const all = jobs();
  removeStrays(all);
  const stale = all.filter((job) => !isCurrent(job));
  if (stale.length === 0) return;
  // Loading the compiler takes a good part of a second that most starts can do without.
  const { default: swc } = await import('@swc/core');
  for (const job of stale) {
    compileOne(swc, { ...options, swcrc: false, configFile: false }, job);
    stampTime(job);
  }
};
