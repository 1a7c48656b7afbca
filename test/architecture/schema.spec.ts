import { repositoryFile, sourceFiles } from '../support/source-tree';

const schema = repositoryFile('prisma/schema.prisma');
const migrations = sourceFiles(['prisma/migrations'], /\.sql$/);

/** The field lines of every model: name, type, attributes. */
const fields = schema
  .split('\n')
  .map((line) => line.trim())
  .filter((line) => /^[a-z]\w*\s+[A-Z]\w*/.test(line));

describe('the schema', () => {
  it('is read by these checks', () => {
    expect(fields.length).toBeGreaterThan(100);
    expect(migrations.length).toBeGreaterThan(0);
  });

  it('has no floating-point column: weights and money are exact', () => {
    expect(fields.filter((line) => /^\w+\s+Float\b/.test(line))).toEqual([]);
    const FLOATING = /\b(real|double precision|float[48]?)\b/i;
    const floating = migrations.flatMap(({ path, text }) =>
      text
        .split('\n')
        .filter(
          (line) => !line.trim().startsWith('--') && FLOATING.test(line.replaceAll(/'[^']*'/g, '')),
        )
        .map((line) => `${path}: ${line.trim()}`),
    );
    expect(floating).toEqual([]);
    expect(FLOATING.test('"x" DOUBLE PRECISION')).toBe(true);
  });

  it('gives every decimal column its digits', () => {
    expect(
      fields.filter((line) => /^\w+\s+Decimal\b/.test(line) && !line.includes('@db.Decimal(')),
    ).toEqual([]);
  });

  it('keeps every instant with its time zone, and every day without a time', () => {
    const loose = fields.filter(
      (line) => /^\w+\s+DateTime\b/.test(line) && !/@db\.(Timestamptz\(\d\)|Date)/.test(line),
    );
    expect(loose).toEqual([]);
  });

  it('orders its migrations by a time that is in the name', () => {
    const names = migrations.map(({ path }) => path.split('/').at(-2) ?? '');
    expect(names.filter((name) => !/^\d{14}_[a-z0-9_]+$/.test(name))).toEqual([]);
    const times = names.map((name) => name.slice(0, 14));
    expect(new Set(times).size).toBe(times.length);
  });
});
