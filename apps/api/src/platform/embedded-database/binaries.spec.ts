import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeLinks } from './binaries';

it('makes the links of the libraries that a blocked install script did not make, once', () => {
  const root = mkdtempSync(join(tmpdir(), 'ballotin-links-'));
  mkdirSync(join(root, 'native', 'lib'), { recursive: true });
  writeFileSync(join(root, 'native/lib/libx.so.6.18'), 'the library');
  const links = [
    { source: 'native/lib/libx.so.6.18', target: 'native/lib/libx.so' },
    { source: 'native/lib/libx.so.6.18', target: 'native/lib/libx.so.6' },
  ];
  makeLinks(links, root);
  makeLinks(links, root);
  expect(readFileSync(join(root, 'native/lib/libx.so.6'), 'utf8')).toBe('the library');
  expect(readFileSync(join(root, 'native/lib/libx.so'), 'utf8')).toBe('the library');
  rmSync(root, { recursive: true });
});
