import { Injectable } from '@nestjs/common';
import { say, type Sentence } from '../../domain/words/say';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { placeHolds } from '../stock';
import { type BatchHead, loadBatchHead } from './batch-head.queries';
import { mouldUseView, readingView } from './batch-parts';
import type { MouldUseView, ReadingView } from './bench.view';
import { loadDeviations } from './readings.queries';

/** What was written wrongly at the bench: it stays, marked with why, and counts no more. */
@Injectable()
export class WithdrawalsService {
  constructor(private readonly transactions: Transactions) {}

  /**
   * Marks a reading as wrong. It proves nothing from then on: its check is due again, and a value
   * outside the limits holds the lots until the check is read again within them.
   */
  reading(batchId: string, readingId: string, reason: string): Promise<ReadingView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      const found = await tx.reading.findFirst({
        where: { id: readingId, batchId },
        include: { withdrawal: true },
      });
      const reading = orNotFound(found, 'reading', readingId);
      if (reading.withdrawal !== null) throw twice(say`This reading is marked as wrong already.`);
      const withdrawal = await tx.readingWithdrawal.create({
        data: { readingId, reason, at: by.at, userId: by.userId },
      });
      await this.holdWhatIsOpenAgain(tx, by, head);
      noteInJournal(by, {
        action: 'batch.reading-withdrawn',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: {
          reading: readingId,
          measure: reading.measure,
          value: reading.value.toFixed(),
          verdict: reading.verdict,
          reason,
        },
      });
      return readingView({ ...reading, withdrawal });
    });
  }

  /** Takes back that a mould was filled: another was, or none. */
  mouldUse(batchId: string, useId: string, reason: string): Promise<MouldUseView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      const found = await tx.mouldUse.findFirst({
        where: { id: useId, batchId },
        include: { mould: { include: { design: true } }, withdrawal: true },
      });
      const use = orNotFound(found, 'mould use', useId);
      if (use.withdrawal !== null)
        throw twice(say`This use of mould ${use.mould.tag} was taken back already.`);
      const withdrawal = await tx.mouldUseWithdrawal.create({
        data: { mouldUseId: useId, reason, at: by.at, userId: by.userId },
      });
      noteInJournal(by, {
        action: 'batch.mould-use-withdrawn',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { mould: use.mould.tag, filled: use.cavitiesFilled, reason },
      });
      return mouldUseView({ ...use, withdrawal });
    });
  }

  /** A reading that had ended a deviation proves nothing any more: its lots are held again. */
  private async holdWhatIsOpenAgain(tx: Tx, by: By, head: BatchHead): Promise<void> {
    const lots = await tx.lot.findMany({
      where: { batchId: head.id, takenBackAt: null },
      include: { holds: { select: { causeId: true } } },
    });
    if (lots.length === 0) return;
    const deviations = await loadDeviations(tx, head);
    const holds = lots.flatMap((lot) =>
      deviations
        .filter(({ readingId }) => lot.holds.every(({ causeId }) => causeId !== readingId))
        .map(({ readingId, reason }) => ({
          lotId: lot.id,
          kind: 'deviation' as const,
          reason,
          causeId: readingId,
        })),
    );
    await placeHolds(tx, by, holds);
  }
}

const twice = (detail: Sentence): RefusalError =>
  new RefusalError({ code: 'already-reversed', detail });
