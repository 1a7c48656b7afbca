import type { Tx } from '../../platform/database/prisma';
import { noteInJournal } from '../../platform/journal/journal';
import { createSpecification } from '../specifications';
import type { CsvRow } from './csv-table';
import { type ImportPlan, type PlannedLine, type Register, repeated } from './register';
import { RowReader } from './row-reader';
import { COLUMNS } from './specification-columns';
import { exportSpecifications } from './specification-export';
import { readSpecificationRow } from './specification-rows';
import { named, say } from '../../domain/words/say';

const plan = async (tx: Tx, rows: readonly CsvRow[]): Promise<ImportPlan> => {
  const readers = rows.map((row) => new RowReader(row));
  const read = readers.map(readSpecificationRow);
  const items = await tx.item.findMany({ where: { name: { in: read.map((row) => row.item) } } });
  const suppliers = await tx.supplier.findMany({
    where: { name: { in: read.map((row) => row.supplier) } },
  });
  const lines = read.flatMap((row, index): PlannedLine[] => {
    const item = items.find((found) => found.name === row.item);
    const supplier = suppliers.find((found) => found.name === row.supplier);
    const reader = readers[index];
    if (!item && row.item !== '') reader?.problem('item', say`there is no “${row.item}”`);
    if (item && item.kind !== 'ingredient')
      reader?.problem('item', say`is ${named(item.kind)}, no ingredient`);
    if (!supplier && row.supplier !== '')
      reader?.problem('supplier', say`there is no “${row.supplier}”`);
    const { json } = row;
    if (!item || !supplier || !json) return [];
    const of = { itemId: item.id, supplierId: supplier.id, document: row.document };
    return [
      {
        kind: 'create',
        write: async (write, by) => {
          const id = await createSpecification(write, by, of, json);
          noteInJournal(by, {
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
  export: exportSpecifications,
};
