import type { Tx } from '../../platform/database/prisma';
import { COMPOSITION, NUTRITION } from './specification-columns';

const at = (json: unknown, path: readonly string[]): string | null => {
  const found = path.reduce<unknown>(
    (value, name) =>
      typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined,
    json,
  );
  return typeof found === 'string' ? found : null;
};

/** The newest statement of each supplier, in the columns that an import reads. */
export const exportSpecifications = async (tx: Tx): Promise<(string | null)[][]> => {
  const rows = await tx.specification.findMany({
    where: { state: { not: 'withdrawn' } },
    distinct: ['itemId', 'supplierId'],
    orderBy: [{ itemId: 'asc' }, { supplierId: 'asc' }, { number: 'desc' }],
    include: { item: true, supplier: true, allergens: true },
  });
  return rows
    .sort((a, b) => (a.item.name < b.item.name ? -1 : 1))
    .map((row) => {
      const of = (presence: string): string =>
        row.allergens
          .filter((stated) => stated.presence === presence)
          .map((stated) => stated.allergen)
          .sort()
          .join(' ');
      return [
        row.item.name,
        row.supplier.name,
        row.document,
        at(row.labelNames, ['en']),
        at(row.labelNames, ['fr']),
        of('contains'),
        of('may_contain'),
        of('absent'),
        JSON.stringify(row.ingredients),
        JSON.stringify(row.statements),
        // The strength by volume is a way of stating the alcohol, which has a column of its own.
        null,
        ...COMPOSITION.map(([, ...path]) => at(row.composition, path)),
        ...NUTRITION.map(([, nutrient]) => at(row.nutrition, [nutrient])),
      ];
    });
};
