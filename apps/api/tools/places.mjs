import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');
export const API = join(ROOT, 'apps', 'api');
export const WEB = join(ROOT, 'apps', 'web');
/** Lives in node_modules so that a new installation also builds anew. */
export const STAMPS = join(ROOT, 'node_modules', '.cache', 'ballotin');
