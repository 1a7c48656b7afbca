import type { Prisma } from '../../generated/prisma/client';
import type { By } from '../database/transactions';

export interface JournalLine {
  /** A verb in the trade's words: `delivery.booked`, `hold.released`. */
  readonly action: string;
  readonly subjectKind: string;
  /** Code or id by which a person finds the subject again. */
  readonly subjectId: string;
  readonly detail?: Prisma.InputJsonObject;
}

/** Notes who did what; it is stored when the booking closes, in the same transaction. */
export const noteInJournal = (by: By, line: JournalLine): void => {
  by.journal.push(line);
};
