import { alcoholGramsPer100g } from '../../domain/composition';
import {
  ALLERGENS,
  FAT_KINDS,
  NUTRIENTS,
  parseSpecification,
  POLYOL_KINDS,
  SINGLE_PARTS,
  specificationToJson,
  SUGAR_KINDS,
  type SpecificationJson,
} from '../../domain/specification';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { writeJournal } from '../../platform/journal/journal';
import { createSpecification } from '../specifications';
import type { CsvRow } from './csv-table';
import { type ImportPlan, type PlannedLine, type Register, repeated } from './register';
import { RowReader } from './row-reader';

/** How columns of a composition are called, and where they stand in it. */
const COMPOSITION: readonly (readonly [column: string, ...path: string[]])[] = [
  ...SINGLE_PARTS.map((part) => [part.toLowerCase(), part] as const),
  ...FAT_KINDS.map((kind) => [kind.toLowerCase(), 'fat', kind] as const),
  ...SUGAR_KINDS.map((kind) => [kind.toLowerCase(), 'sugars', kind] as const),
  ...POLYOL_KINDS.map((kind) => [kind.toLowerCase(), 'polyols', kind] as const),
  ['cocoa_butter_in_cocoa', 'cocoaSolids', 'cocoaButter'],
  ['fat_free_cocoa', 'cocoaSolids', 'fatFreeCocoa'],
  ['milk_solids', 'cocoaSolids', 'milkSolids'],
  ['milk_fat_in_milk', 'cocoaSolids', 'milkFat'],
  ['syrup_solids', 'glucoseSyrup', 'solids'],
  ['syrup_de', 'glucoseSyrup', 'dextroseEquivalent'],
  ['dairy_ash', 'dairyAsh'],
];

const NUTRITION = NUTRIENTS.map(
  (nutrient) => [`per100_${nutrient.toLowerCase()}`, nutrient] as const,
);

const COLUMNS = [
  'item', 'supplier', 'document', 'name_en', 'name_fr', 'contains', 'may_contain', 'absent',
  'ingredient_json', 'statements_json', 'alcohol_percent_vol',
  ...COMPOSITION.map(([column]) => column),
  ...NUTRITION.map(([column]) => column),
]; // prettier-ignore

type Json = Record<string, unknown>;

const put = (into: Json, path: readonly string[], value: string): void => {
  const [name = '', ...rest] = path;
  if (rest.length === 0) into[name] = value;
  else {
    const inner = (into[name] ?? {}) as Json;
    into[name] = inner;
    put(inner, rest, value);
  }
};

const compositionOf = (row: RowReader): Json | null => {
  const composition: Json = {};
  for (const [column, ...path] of COMPOSITION) {
    const value = row.decimal(column, 6);
    if (value !== null) put(composition, path, value);
  }
  const strength = row.decimal('alcohol_percent_vol', 2);
  if (strength !== null) {
    const grams = alcoholGramsPer100g(new Decimal(strength));
    if (composition['alcohol'] !== undefined) {
      row.problem('alcohol_percent_vol', 'states the alcohol twice: leave one of the two empty');
    } else if (grams === null) {
      row.problem('alcohol_percent_vol', 'must be at most 100');
    } else composition['alcohol'] = grams.toFixed(2);
  }
  return Object.keys(composition).length === 0 ? null : composition;
};

const nutritionOf = (row: RowReader): Json | null => {
  const stated = NUTRITION.flatMap(([column, nutrient]) => {
    const value = row.decimal(column, 6);
    return value === null ? [] : [[nutrient, value] as const];
  });
  return stated.length === 0 ? null : Object.fromEntries(stated);
};

/** What isn't named in one of the three columns stays unknown; `absent` may say `all_others`. */
const allergensOf = (row: RowReader): Record<string, string> => {
  const contains = row.list('contains', ALLERGENS);
  const mayContain = row.list('may_contain', ALLERGENS);
  const absent = row.list('absent', [...ALLERGENS, 'all_others']);
  const stated = new Map<string, string>();
  const say = (allergen: string, presence: string): void => {
    if (stated.has(allergen)) row.problem('contains', `${allergen} is stated twice`);
    stated.set(allergen, presence);
  };
  for (const allergen of contains) say(allergen, 'contains');
  for (const allergen of mayContain) say(allergen, 'may_contain');
  for (const allergen of absent) if (allergen !== 'all_others') say(allergen, 'absent');
  if (absent.includes('all_others')) {
    for (const allergen of ALLERGENS) if (!stated.has(allergen)) stated.set(allergen, 'absent');
  }
  return Object.fromEntries(stated);
};

/** A single ingredient from its names; a compound one comes as JSON, as the API states it. */
const ingredientOf = (row: RowReader, item: string, contains: readonly string[]): unknown => {
  const stated = row.json('ingredient_json');
  if (stated !== null) return stated;
  const french = row.text('name_fr', 120);
  return {
    names: { en: row.text('name_en', 120) ?? item, ...(french === null ? {} : { fr: french }) },
    percent: null,
    origins: contains
      .filter((allergen) => allergen !== 'sulphites')
      .map((allergen) => ({ allergen })),
    flags: {},
    parts: [],
  };
};

interface Read {
  readonly item: string;
  readonly supplier: string;
  readonly document: string | null;
  readonly json: SpecificationJson | null;
}

const readRow = (row: RowReader): Read => {
  const item = row.needed('item', 120);
  const allergens = allergensOf(row);
  const contains = Object.keys(allergens).filter((name) => allergens[name] === 'contains');
  const parsed = parseSpecification({
    ingredient: ingredientOf(row, item, contains),
    allergens,
    composition: compositionOf(row),
    nutrition: nutritionOf(row),
    statements: row.json('statements_json') ?? {},
  });
  if (!parsed.ok) {
    for (const { pointer, message } of parsed.problems) row.problem(pointer.slice(1), message);
  }
  return {
    item,
    supplier: row.needed('supplier', 120),
    document: row.text('document', 300),
    json: parsed.ok ? specificationToJson(parsed.value) : null,
  };
};

const plan = async (tx: Tx, rows: readonly CsvRow[]): Promise<ImportPlan> => {
  const readers = rows.map((row) => new RowReader(row));
  const read = readers.map(readRow);
  const items = await tx.item.findMany({ where: { name: { in: read.map((row) => row.item) } } });
  const suppliers = await tx.supplier.findMany({
    where: { name: { in: read.map((row) => row.supplier) } },
  });
  const lines = read.flatMap((row, index): PlannedLine[] => {
    const item = items.find((found) => found.name === row.item);
    const supplier = suppliers.find((found) => found.name === row.supplier);
    const reader = readers[index];
    if (!item && row.item !== '') reader?.problem('item', `there is no “${row.item}”`);
    if (item && item.kind !== 'ingredient')
      reader?.problem('item', `is ${item.kind}, no ingredient`);
    if (!supplier && row.supplier !== '')
      reader?.problem('supplier', `there is no “${row.supplier}”`);
    const { json } = row;
    if (!item || !supplier || !json) return [];
    const of = { itemId: item.id, supplierId: supplier.id, document: row.document };
    return [
      {
        kind: 'create',
        write: async (write, by) => {
          const id = await createSpecification(write, by, of, json);
          await writeJournal(write, by, {
            action: 'specification.drafted',
            subjectKind: 'specification',
            subjectId: id,
            detail: { item: item.name, by: 'import' },
          });
        },
      },
    ];
  });
  const keys = read.map((row, index) => ({
    line: readers[index]?.line ?? 0,
    key: `${row.item}, ${row.supplier}`,
  }));
  return {
    lines,
    problems: [...readers.flatMap((row) => row.problems), ...repeated(keys, 'item')],
  };
};

/** Every line becomes a draft: a person approves what a supplier states, never a file. */
export const SPECIFICATIONS: Register = {
  columns: COLUMNS,
  required: ['item', 'supplier'],
  plan,
  export: (tx) => exportSpecifications(tx),
};

const at = (json: unknown, path: readonly string[]): string | null => {
  const found = path.reduce<unknown>(
    (value, name) =>
      typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined,
    json,
  );
  return typeof found === 'string' ? found : null;
};

const exportSpecifications = async (tx: Tx): Promise<(string | null)[][]> => {
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
