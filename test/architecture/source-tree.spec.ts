import { type SourceFile, sourceFiles } from '../support/source-tree';

const FOLDERS = ['apps/api/src', 'apps/api/tools', 'apps/web/src', 'prisma', 'test'];
const files = sourceFiles(FOLDERS, /\.(ts|tsx|mjs)$/);

/** Longer than their kind allows, each with the reason why cutting it would not help the reader. */
const LONG_FILES: Readonly<Record<string, string>> = {};

const longest = (path: string): number => {
  // The fields of a resource are one list that is looked up, not read.
  if (/\.(dto|view)\.ts$/.test(path)) return 300;
  // Words of the screens in two languages, side by side.
  if (path.endsWith('messages.ts')) return 400;
  // Cases of one rule, one below the other.
  if (path.startsWith('test/') || /\.spec\.tsx?$/.test(path)) return 300;
  return 150;
};

const lines = ({ text }: SourceFile): number => text.trimEnd().split('\n').length;

const VAGUE = /(^|\/)(common|misc)(\/|\.|$)|(^|[/.-])(utils?|helpers?|managers?)([/.-]|$)/;

describe('the source tree', () => {
  it('has sources in every part, so that the checks below look at something', () => {
    for (const folder of FOLDERS) {
      expect(files.filter(({ path }) => path.startsWith(folder)).length).toBeGreaterThan(0);
    }
  });

  it('names folders and files by what they hold', () => {
    expect(files.map(({ path }) => path).filter((path) => VAGUE.test(path))).toEqual([]);
    expect(VAGUE.test('apps/api/src/utils/x.ts')).toBe(true);
    expect(VAGUE.test('apps/web/src/shared/date-helper.ts')).toBe(true);
    expect(VAGUE.test('apps/api/src/domain/common-causes/x.ts')).toBe(false);
  });

  it('names files in kebab-case', () => {
    const odd = files
      .map(({ path }) => path)
      .filter((path) => !/^[a-z0-9-]+(\.[a-z0-9-]+)*$/.test(path.split('/').at(-1) ?? ''));
    expect(odd).toEqual([]);
  });

  it('keeps files short', () => {
    const long = files
      .filter((file) => lines(file) > longest(file.path) && !(file.path in LONG_FILES))
      .map((file) => `${file.path}: ${String(lines(file))} lines`);
    expect(long).toEqual([]);
  });

  it('lists only files that are too long', () => {
    const short = files.filter((file) => lines(file) <= longest(file.path));
    expect(short.map(({ path }) => path).filter((path) => path in LONG_FILES)).toEqual([]);
    const paths = new Set(files.map(({ path }) => path));
    expect(Object.keys(LONG_FILES).filter((path) => !paths.has(path))).toEqual([]);
  });

  it('switches no check off without saying why', () => {
    const silent = files.flatMap(({ path, text }) =>
      text
        .split('\n')
        .filter((line) => /eslint-disable|@ts-expect-error|@ts-ignore/.test(line))
        .filter((line) => !/ -- \S|@ts-expect-error .{10}/.test(line) && !line.includes('/.test('))
        .map((line) => `${path}: ${line.trim()}`),
    );
    expect(silent).toEqual([]);
  });
});
