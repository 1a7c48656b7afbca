import type { Tx } from '../../platform/database/prisma';
import { joined, within, type RawEntry, type Span } from './diary-sources';
import { type DiaryWords, WORK_ACTIONS } from './diary.words';

type Names = ReadonlyMap<string, string>;

/** What the codes and ids of the journal stand for, as an inspector reads it. */
const namesOf = async (tx: Tx, subjects: readonly string[]): Promise<Names> => {
  const ofCode = { where: { code: { in: [...subjects] } } };
  const batches = await tx.batch.findMany({
    ...ofCode,
    select: {
      code: true,
      recipeVersion: { select: { recipe: { select: { item: { select: { name: true } } } } } },
    },
  });
  const dispatches = await tx.dispatch.findMany({
    ...ofCode,
    select: { code: true, customer: { select: { name: true } } },
  });
  return new Map([
    ...batches.map(({ code, recipeVersion }): [string, string] => [
      code,
      [code, recipeVersion?.recipe.item.name].filter(Boolean).join(' '),
    ]),
    ...dispatches.map(({ code, customer }): [string, string] => [
      code,
      customer === null ? code : `${code} ${customer.name}`,
    ]),
  ]);
};

const deliveriesOf = async (tx: Tx, ids: readonly string[], words: DiaryWords): Promise<Names> => {
  const rows = await tx.delivery.findMany({
    where: { id: { in: [...ids] } },
    select: { id: true, reference: true, supplier: { select: { name: true } } },
  });
  return new Map(
    rows.map(({ id, reference, supplier }) => [id, joined(words, supplier.name, reference)]),
  );
};

/** Work done, from the journal: which batch of what, goods from whom and to whom. */
export const work = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.journalEntry.findMany({
    where: { at: within(span), action: { in: WORK_ACTIONS } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  });
  const subjects = [...new Set(rows.map(({ subjectId }) => subjectId))];
  const names = await namesOf(tx, subjects);
  const deliveries = await deliveriesOf(
    tx,
    rows.filter(({ action }) => action === 'delivery.booked').map(({ subjectId }) => subjectId),
    words,
  );
  const subjectOf = (action: string, id: string): string =>
    // A stocktake is the whole store's, and its id says nothing to anybody.
    action === 'stocktake.booked' ? '' : (deliveries.get(id) ?? names.get(id) ?? id);
  return rows.map((row) => ({
    at: row.at,
    kind: 'work',
    subject: subjectOf(row.action, row.subjectId),
    what: words.actions[row.action] ?? row.action,
    attention: false,
    userId: row.userId,
    userName: row.userName,
  }));
};
