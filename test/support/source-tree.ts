import { readFileSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

const root = join(__dirname, '../..');

/** Made by tools, not by people. */
const GENERATED = ['apps/api/src/generated', 'apps/web/src/api/schema.d.ts'];
const SKIPPED = ['node_modules', 'dist', 'artifacts'];

export interface SourceFile {
  /** From the top of the repository, with slashes. */
  readonly path: string;
  readonly text: string;
}

const below = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED.includes(entry.name) ? [] : below(path);
    return [path];
  });

/** Every file that people write below some folders of the repository. */
export const sourceFiles = (folders: readonly string[], ending: RegExp): SourceFile[] =>
  folders
    .flatMap((folder) => below(join(root, folder)))
    .map((file) => ({ file, path: relative(root, file).split(sep).join('/') }))
    .filter(({ path }) => ending.test(path))
    .filter(({ path }) => !GENERATED.some((made) => path.startsWith(made)))
    .map(({ file, path }) => ({ path, text: readFileSync(file, 'utf8') }));

export const repositoryFile = (path: string): string => readFileSync(join(root, path), 'utf8');
