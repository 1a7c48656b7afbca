import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * The folder that holds `prisma/migrations`. It is looked for upwards from this file, so that the
 * answer is the same from the sources, from `dist`, under jest and in the container image.
 */
export const repositoryRoot = (): string => {
  let folder = __dirname;
  while (!existsSync(join(folder, 'prisma', 'schema.prisma'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error(`No prisma/schema.prisma above ${__dirname}`);
    folder = parent;
  }
  return folder;
};
