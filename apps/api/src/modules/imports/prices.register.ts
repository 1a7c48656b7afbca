import { dayFromDb } from '../../platform/database/days';
import { moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { noteInJournal } from '../../platform/journal/journal';
import { insertPrice } from '../pricing';
import type { CsvRow } from './csv-table';
import { type ImportPlan, type PlannedLine, type Register, repeated } from './register';
import { RowReader } from './row-reader';
import { named, say } from '../../domain/words/say';

const LISTS = ['counter', 'trade'] as const;

interface Read {
  readonly item: string;
  readonly list: 'counter' | 'trade';
  readonly price: string;
  readonly fromDay: string;
  readonly note: string | null;
}

const readRow = (row: RowReader): Read => {
  const list = row.choice('list', LISTS);
  if (list === null) row.needed('list');
  const price = row.decimal('price', 4) ?? row.needed('price');
  const fromDay = row.day('from_day') ?? row.needed('from_day');
  const item = row.needed('item', 120);
  const note = row.text('note', 500);
  return { item, list: list === 'trade' ? 'trade' : 'counter', price, fromDay, note };
};

const keyOf = (row: Read): string => `${row.item}, ${row.list}, ${row.fromDay}`;

const plan = async (tx: Tx, rows: readonly CsvRow[]): Promise<ImportPlan> => {
  const readers = rows.map((row) => new RowReader(row));
  const read = readers.map(readRow);
  const items = await tx.item.findMany({ where: { name: { in: read.map((row) => row.item) } } });
  const byName = new Map(items.map((item) => [item.name, item]));
  const stored = await tx.price.findMany({
    where: { itemId: { in: items.map((item) => item.id) } },
    orderBy: { at: 'asc' },
  });
  const held = new Map(
    stored.map((price) => [
      `${price.itemId}, ${price.list}, ${dayFromDb(price.fromDay)}`,
      moneyText(price.price),
    ]),
  );
  const lines = read.flatMap((row, index): PlannedLine[] => {
    const item = byName.get(row.item);
    if (!item) {
      if (row.item !== '') readers[index]?.problem('item', say`there is no “${row.item}”`);
      return [];
    }
    if (item.kind !== 'piece' && item.kind !== 'box') {
      readers[index]?.problem(
        'item',
        say`is ${named(item.kind)} and isn’t sold: pieces and boxes have prices`,
      );
      return [];
    }
    const before = held.get(`${item.id}, ${row.list}, ${row.fromDay}`);
    const same = before !== undefined && Number(before) === Number(row.price);
    return [
      {
        kind: same ? 'same' : before === undefined ? 'create' : 'change',
        write: async (write, by) => {
          if (same) return;
          const { list, price, fromDay } = row;
          await insertPrice(write, by, item.id, {
            list,
            price,
            fromDay,
            ...(row.note === null ? {} : { note: row.note }),
          });
          noteInJournal(by, {
            action: 'price.set',
            subjectKind: 'item',
            subjectId: item.name,
            detail: { list, price, fromDay, by: 'import' },
          });
        },
      },
    ];
  });
  const keys = read.map((row, index) => ({ line: readers[index]?.line ?? 0, key: keyOf(row) }));
  return {
    lines,
    problems: [...readers.flatMap((row) => row.problems), ...repeated(keys, 'item')],
  };
};

export const PRICE_LISTS: Register = {
  columns: ['item', 'list', 'price', 'from_day', 'note'],
  required: ['item', 'list', 'price', 'from_day'],
  plan,
  export: async (tx) => {
    const prices = await tx.price.findMany({ orderBy: [{ fromDay: 'asc' }, { at: 'asc' }] });
    const ids = prices.map((price) => price.itemId);
    const items = await tx.item.findMany({ where: { id: { in: ids } } });
    const names = new Map(items.map((item) => [item.id, item.name]));
    // Of several prices for one day the last holds, so it is the one that is written out.
    const last = new Map(
      prices.map((row) => [`${row.itemId} ${row.list} ${dayFromDb(row.fromDay)}`, row]),
    );
    return [...last.values()].map((row) => [
      names.get(row.itemId) ?? '',
      row.list,
      moneyText(row.price),
      dayFromDb(row.fromDay),
      row.note,
    ]);
  },
};
