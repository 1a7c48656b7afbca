import { type SourceFile, sourceFiles } from '../support/source-tree';

const FOLDERS = ['apps/api/src', 'apps/api/tools', 'apps/web/src', 'prisma', 'test'];
const files = sourceFiles(FOLDERS, /\.(ts|tsx|mjs)$/);

/** Longer than their kind allows, each with the reason why cutting it would not help the reader. */
const LONG_FILES: Readonly<Record<string, string>> = {
  'apps/api/src/modules/access/access.controller.ts': 'every route of signing in and out',
  'apps/api/src/modules/complaints/complaints.service.ts':
    'one method for each step of a complaint',
  'apps/api/src/modules/deliveries/deliveries.service.ts': 'a delivery is booked in one go',
  'apps/api/src/modules/orders/orders.service.ts': 'one method for each step of an order',
  'apps/api/src/modules/planning/bench.service.ts': 'one method for each reading of the bench',
  'apps/api/src/documents/papers/recall.words.ts': 'the words of three papers in two languages',
  'apps/api/src/modules/recalls/recalls.service.ts': 'one method for each step of a recall',
  'apps/api/src/modules/stock-value/stocktakes.service.ts': 'one method for each step of a count',
  'apps/api/src/modules/workshop/workshop.service.ts': 'one method for each setting',
  'apps/api/src/platform/dto/number-fields.ts': 'one decorator for each kind of number',
  'test/e2e/day.spec.ts': 'one day of the workshop, told from morning to evening',
  'test/integration/labels/labels.spec.ts': 'one label a case, against one kitchen',
  'test/integration/prices/prices.spec.ts': 'one price a case, against one shop',
  'test/support/books/books.ts': 'an independent reading of the books, kept apart from the product',
  'test/support/histories/history.ts': 'one step for each thing that happens in a workshop',
  'test/support/papers/sample-views.ts': 'the data of every paper, one below the other',
};

const longest = (path: string): number => {
  // The fields of a resource are one list that is looked up, not read.
  if (/\.(dto|view)\.ts$/.test(path)) return 300;
  // Words of the screens in two languages, side by side.
  if (path.endsWith('messages.ts')) return 400;
  // Markup takes a line for each element and attribute.
  if (path.endsWith('.tsx')) return 250;
  // What the invented workshop has and did, entry by entry.
  if (path.startsWith('prisma/demo/')) return 250;
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

  it('excuses only files that are too long', () => {
    const short = files.filter((file) => lines(file) <= longest(file.path));
    expect(short.map(({ path }) => path).filter((path) => path in LONG_FILES)).toEqual([]);
    const paths = new Set(files.map(({ path }) => path));
    expect(Object.keys(LONG_FILES).filter((path) => !paths.has(path))).toEqual([]);
  });

  it('switches no check off without saying why, there or in the line before', () => {
    const silent = files
      .filter(({ path }) => path !== 'test/architecture/source-tree.spec.ts')
      .flatMap(({ path, text }) => {
        const all = text.split('\n');
        return all
          .filter((line, index) => {
            const said = / -- \S/.test(line) || /^\s*(\/\/|\*)/.test(all[index - 1] ?? '');
            return /eslint-disable|@ts-expect-error|@ts-ignore/.test(line) && !said;
          })
          .map((line) => `${path}: ${line.trim()}`);
      });
    expect(silent).toEqual([]);
  });
});
