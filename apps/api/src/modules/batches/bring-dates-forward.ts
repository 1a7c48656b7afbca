import { Temporal } from 'temporal-polyfill';
import type { DateReason } from '../../domain/shelf-life';
import type { Lot, Prisma } from '../../generated/prisma/client';
import { dayToDb, optionalDayFromDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import type { BatchHead } from './batch-head.queries';
import { lotsCappedBy } from './circle.queries';
import { loadContents } from './contents.queries';
import { dateOf } from './make-lots';
import { loadMakingItem } from './making-item.queries';
import { say } from '../../domain/words/say';

const isLater = (lot: Lot, day: Temporal.PlainDate): boolean => {
  const own = optionalDayFromDb(lot.useBy) ?? optionalDayFromDb(lot.bestBefore);
  return own === null || Temporal.PlainDate.compare(Temporal.PlainDate.from(own), day) > 0;
};

/** The lot's former reasons, none of them ruling any more, and the new one that does. */
const reasonsWith = (lot: Lot, added: DateReason): Prisma.InputJsonArray => {
  const before = Array.isArray(lot.dateReasons) ? lot.dateReasons : [];
  const silenced = before.flatMap((reason) =>
    typeof reason === 'object' && reason !== null ? [{ ...reason, rules: false }] : [],
  );
  return [...silenced, { ...added }];
};

/**
 * After a correction: when a lot that really went in has an earlier date than what was made of it,
 * the date comes forward there and in everything made from it since. It never moves away.
 * @returns codes of the lots whose date came forward: their labels are wrong now
 */
export const bringDatesForward = async (tx: Tx, by: By, head: BatchHead): Promise<string[]> => {
  if (head.recipeVersionId === null) return [];
  const outputs = await tx.lot.findMany({ where: { batchId: head.id, takenBackAt: null } });
  const madeOn = optionalDayFromDb(outputs[0]?.madeOn ?? null);
  if (madeOn === null) return [];
  const { rule } = await loadMakingItem(tx, head);
  const today = Temporal.PlainDate.from(madeOn);
  const date = dateOf({ ...by, today }, await loadContents(tx, head.id), rule);
  const ruling = date.reasons.find(({ rules }) => rules);
  if (date.day === null || ruling === undefined) return [];
  const { day } = date;
  const later = outputs.filter((lot) => lot.frozenOn === null && isLater(lot, day));
  const ahead = await lotsCappedBy(
    tx,
    later.map(({ id }) => id),
  );
  const lots = await tx.lot.findMany({ where: { id: { in: ahead.map(({ id }) => id) } } });
  const changed = lots.filter((lot) => lot.frozenOn === null && isLater(lot, day));
  const text = say`Correction of batch ${head.code}: ${ruling.text}`;
  for (const lot of changed) {
    const column = lot.useBy === null ? 'bestBefore' : 'useBy';
    await tx.lot.update({
      where: { id: lot.id },
      data: {
        [column]: dayToDb(day.toString()),
        dateReasons: reasonsWith(lot, { ...ruling, text }),
      },
      select: { id: true },
    });
  }
  return changed.map(({ code }) => code);
};
