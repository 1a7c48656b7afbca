import { createTestDatabase } from '../../support/database/test-database';
import { type DescribedTable, describedTables } from '../../support/schema/read-schema';
import { realTables } from '../../support/schema/read-tables';

const described = describedTables();
let real: DescribedTable[];

beforeAll(async () => {
  const database = await createTestDatabase();
  real = await realTables(database.url);
  await database.drop();
});

const realTable = (name: string): DescribedTable | undefined =>
  real.find((table) => table.name === name);

const sorted = (lines: readonly string[] | undefined): string[] => [...(lines ?? [])].sort();

describe('the migrated database and schema.prisma', () => {
  it('have the same tables', () => {
    expect(described.length).toBeGreaterThan(30);
    expect(sorted(real.map(({ name }) => name))).toEqual(sorted(described.map(({ name }) => name)));
  });

  it.each(described.map((table) => [table.name, table] as const))(
    'describe %s alike: columns, key, unique columns and references',
    (name, table) => {
      const found = realTable(name);
      expect(sorted(found?.columns)).toEqual(sorted(table.columns));
      expect(found?.key).toEqual(table.key);
      // The database may refuse more than the schema says, never less.
      expect(sorted(found?.references)).toEqual(expect.arrayContaining(sorted(table.references)));
      expect(sorted(found?.uniques)).toEqual(expect.arrayContaining(sorted(table.uniques)));
      expect(sorted(found?.indexes)).toEqual(expect.arrayContaining(sorted(table.indexes)));
    },
  );
});
