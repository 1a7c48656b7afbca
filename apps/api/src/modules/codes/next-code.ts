import { Temporal } from 'temporal-polyfill';
import { nextCode as codeAfter, type Thing, thingPattern } from '../../domain/identification';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';

type Numbered = 'lot' | Extract<Thing, 'batch' | 'dispatch' | 'complaint' | 'recall'>;
type Tagged = Extract<Thing, 'mould' | 'tank' | 'place'>;

const nextNumber = async (tx: Tx, sequence: string): Promise<number> => {
  const [row] = await tx.$queryRaw<[{ number: bigint }]>`
    SELECT nextval(${sequence}::regclass) AS number`;
  return Number(row.number);
};

/** Numbers whose check character people misread are passed over, by this function and the domain. */
const nextOf = async (
  tx: Tx,
  sequence: string,
  pattern: string,
  day: Temporal.PlainDate,
): Promise<string> => {
  for (;;) {
    const number = await nextNumber(tx, sequence);
    const next = codeAfter(pattern, day, number - 1);
    if (next.sequence === number) return next.code;
  }
};

/**
 * The next code of a lot, batch, dispatch, complaint or recall case, dated on the booking's day.
 * Numbers come from a sequence: two clients never get the same one, and gaps are harmless.
 */
export const nextCode = (tx: Tx, by: By, kind: Numbered): Promise<string> =>
  nextOf(
    tx,
    `${kind}_code_seq`,
    kind === 'lot' ? by.workshop.codePattern : thingPattern(kind),
    by.today,
  );

/** The next tag of a mould, tank or place. */
export const nextTag = (tx: Tx, kind: Tagged): Promise<string> =>
  nextOf(tx, 'tag_code_seq', thingPattern(kind), Temporal.PlainDate.from('2000-01-01'));
