import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { STAMPS } from './places.mjs';

/** Every file below a folder that `keep` accepts, by path; folders `skip` accepts are not entered. */
export const filesBelow = (folder, keep = () => true, skip = () => false) =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return skip(entry.name) ? [] : filesBelow(path, keep, skip);
    return entry.isFile() && keep(path) ? [path] : [];
  });

/** A hash of names, sizes and times: cheap, and different after every edit. */
export const hashOfTimes = (files) => {
  const hash = createHash('sha256');
  for (const file of [...files].sort()) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${file}\0${size}\0${mtimeMs}\n`);
  }
  return hash.digest('hex');
};

export const hashOfTexts = (...texts) =>
  createHash('sha256').update(texts.join('\0')).digest('hex');

/** Does the work unless it was done for this very hash, and remembers that it was. */
export const onceFor = async (name, hash, work) => {
  const stamp = join(STAMPS, name);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hash) return;
  await work();
  mkdirSync(STAMPS, { recursive: true });
  writeFileSync(stamp, hash);
};

/** Makes the next `onceFor` of that name do its work. */
export const forget = (name) => rmSync(join(STAMPS, name), { force: true });
