// `npm run screenshots`: pictures of every screen at three sizes in two languages, to be looked at.
import { join } from 'node:path';
import { ROOT } from './places.mjs';
import { become } from './run.mjs';

process.env.SCREENSHOTS = '1';
become(join(ROOT, 'apps', 'api', 'tools', 'test.mjs'), ['browser', 'test/browser/screens']);
