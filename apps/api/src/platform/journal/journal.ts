import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../database/prisma';
import type { By } from '../database/transactions';

export interface JournalLine {
  /** A verb in the trade's words: `delivery.booked`, `hold.released`. */
  readonly action: string;
  readonly subjectKind: string;
  /** Code or id by which a person finds the subject again. */
  readonly subjectId: string;
  readonly detail?: Prisma.InputJsonObject;
}

/** Writes who did what, in the transaction that does it. */
export const writeJournal = async (tx: Tx, by: By, line: JournalLine): Promise<void> => {
  await tx.journalEntry.create({
    data: {
      at: by.at,
      userId: by.userId,
      userName: by.userName,
      fromAddress: by.fromAddress,
      action: line.action,
      subjectKind: line.subjectKind,
      subjectId: line.subjectId,
      detail: line.detail ?? {},
    },
    select: { id: true },
  });
};
