import { toGtin14 } from '../../domain/identification';
import { REFERENCE_INGREDIENTS } from '../../domain/reference-ingredients';
import type { Item, Prisma } from '../../generated/prisma/client';
import { moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { UNITS } from '../items';
import { genericKeyOf, withGenericComposition } from '../recipes';
import type { CsvRow } from './csv-table';
import { type ImportPlan, type PlannedLine, type Register, repeated } from './register';
import { RowReader } from './row-reader';
import { named, say } from '../../domain/words/say';

const COLUMNS = [
  'name', 'kind', 'unit', 'gtin', 'perishable', 'caps_date', 'infusion_only', 'processing_aid',
  'storage_conditions', 'replacement_price', 'generic_composition', 'note',
] as const; // prettier-ignore
const KINDS = ['ingredient', 'packaging'];
const GENERIC_KEYS = REFERENCE_INGREDIENTS.map((row) => row.key);

interface Read {
  readonly name: string;
  readonly kind: string;
  readonly unit: string | null;
  readonly columns: Prisma.ItemUncheckedUpdateInput;
  readonly generic: string | null | undefined;
}

/** Only columns that the file has are touched. */
const readRow = (row: RowReader): Read => {
  const name = row.needed('name', 120);
  const kind = row.choice('kind', KINDS) ?? 'ingredient';
  const unit = row.choice('unit', UNITS);
  const columns: Prisma.ItemUncheckedUpdateInput = {};
  const flag = (column: string, set: (value: boolean) => void): void => {
    const value = row.has(column) ? row.flag(column) : null;
    if (value !== null) set(value);
  };
  flag('perishable', (value) => (columns.perishable = value));
  flag('caps_date', (value) => (columns.capsDate = value));
  flag('infusion_only', (value) => (columns.infusionOnly = value));
  flag('processing_aid', (value) => (columns.processingAid = value));
  if (row.has('gtin')) columns.gtin = gtinOf(row);
  if (row.has('storage_conditions'))
    columns.storageConditions = row.text('storage_conditions', 300);
  if (row.has('replacement_price')) columns.replacementPrice = row.decimal('replacement_price', 4);
  if (row.has('note')) columns.note = row.text('note', 2000);
  const generic = row.has('generic_composition')
    ? row.choice('generic_composition', GENERIC_KEYS)
    : undefined;
  return { name, kind, unit, columns, generic };
};

const gtinOf = (row: RowReader): string | null => {
  const text = row.text('gtin', 14);
  if (text === null) return null;
  const gtin = toGtin14(text);
  if (gtin.ok) return gtin.value;
  row.problem('gtin', gtin.refusal.detail);
  return null;
};

const plannedLine = (read: Read, before: Item | undefined): PlannedLine => {
  const kept = (before?.settings ?? {}) as Prisma.InputJsonObject;
  const settings = read.generic === undefined ? kept : withGenericComposition(kept, read.generic);
  return {
    kind: before ? 'change' : 'create',
    write: async (tx, by) => {
      if (before) {
        const data = { ...read.columns, settings, version: { increment: 1 } };
        await tx.item.update({ where: { id: before.id }, data });
      } else {
        const unit = read.unit ?? (read.kind === 'packaging' ? 'pc' : 'g');
        const made = { ...read.columns, settings } as Prisma.ItemUncheckedCreateInput;
        await tx.item.create({
          data: { ...made, id: newId(), name: read.name, kind: read.kind, unit },
        });
      }
      noteInJournal(by, {
        action: before ? 'item.changed' : 'item.created',
        subjectKind: 'item',
        subjectId: read.name,
        detail: { by: 'import' },
      });
    },
  };
};

const plan = async (tx: Tx, rows: readonly CsvRow[]): Promise<ImportPlan> => {
  const readers = rows.map((row) => new RowReader(row));
  const read = readers.map(readRow);
  const names = read.map((row) => row.name);
  const known = await tx.item.findMany({ where: { name: { in: names } } });
  const byName = new Map(known.map((item) => [item.name, item]));
  const gtins = read.flatMap((row) =>
    typeof row.columns.gtin === 'string' ? [row.columns.gtin] : [],
  );
  const owners = await tx.item.findMany({ where: { gtin: { in: gtins } } });
  read.forEach((row, index) => {
    const before = byName.get(row.name);
    if (before && before.kind !== row.kind) {
      readers[index]?.problem(
        'kind',
        say`is ${named(before.kind)} already and can’t become ${named(row.kind)}`,
      );
    }
    if (before && row.unit !== null && row.unit !== before.unit) {
      readers[index]?.problem('unit', say`is ${named(before.unit)} already; stock is kept in it`);
    }
    const owner = owners.find((item) => item.gtin === row.columns.gtin);
    if (owner && owner.name !== row.name) {
      readers[index]?.problem('gtin', say`belongs to ${owner.name}`);
    }
  });
  const keys = read.map((row, index) => ({ line: readers[index]?.line ?? 0, key: row.name }));
  return {
    lines: read.map((row) => plannedLine(row, byName.get(row.name))),
    problems: [...readers.flatMap((row) => row.problems), ...repeated(keys, 'name')],
  };
};

const yes = (value: boolean): string => (value ? 'yes' : 'no');

export const INGREDIENTS: Register = {
  columns: COLUMNS,
  required: ['name'],
  plan,
  export: async (tx) => {
    const items = await tx.item.findMany({
      where: { kind: { in: KINDS } },
      orderBy: { name: 'asc' },
    });
    return items.map((item) => [
      item.name,
      item.kind,
      item.unit,
      item.gtin,
      yes(item.perishable),
      yes(item.capsDate),
      yes(item.infusionOnly),
      yes(item.processingAid),
      item.storageConditions,
      item.replacementPrice === null ? null : moneyText(item.replacementPrice),
      genericKeyOf(item),
      item.note,
    ]);
  },
};
