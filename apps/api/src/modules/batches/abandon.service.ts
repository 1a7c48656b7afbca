import { Injectable } from '@nestjs/common';
import type { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { RefusalError } from '../../platform/problems';
import { type BatchHead, loadBatchHead, loadDraws, requireOpen } from './batch-head.queries';
import type { AbandonBatchDto } from './ending.dto';
import type { BatchView } from './batches.view';
import { bookLosses, bookReversal, endBatch } from './bookings.repository';
import { loadContents, lostMass, massOf } from './contents.queries';
import { reversibleDraw } from './draws.service';
import { showBatch } from './show-batch';
import { say } from '../../domain/words/say';

@Injectable()
export class AbandonService {
  constructor(private readonly transactions: Transactions) {}

  /** Ends a batch that makes nothing: what is named goes back to its lot, the rest is thrown away. */
  abandon(batchId: string, dto: AbandonBatchDto): Promise<BatchView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      await this.putBack(tx, by, batchId, dto);
      const wastedG = await this.wasteRest(tx, by, head, dto.reason);
      await endBatch(tx, by, batchId, { state: 'abandoned', endReason: dto.reason });
      noteInJournal(by, {
        action: 'batch.abandoned',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { reason: dto.reason, wastedGrams: wastedG.toFixed() },
      });
      return showBatch(tx, batchId, by.today.toString());
    });
  }

  private async putBack(tx: Tx, by: By, batchId: string, dto: AbandonBatchDto): Promise<void> {
    const ids = [...new Set(dto.returnedDrawIds ?? [])];
    if (ids.length === 0) return;
    const draws = await loadDraws(tx, batchId);
    for (const id of ids) await bookReversal(tx, by, reversibleDraw(draws, id), dto.reason);
  }

  private async wasteRest(tx: Tx, by: By, head: BatchHead, reason: string): Promise<Decimal> {
    const leftG = massOf(await loadContents(tx, head.id));
    const restG = leftG.minus(await lostMass(tx, head.id));
    if (restG.isNegative()) {
      throw new RefusalError({
        code: 'more-out-than-in',
        detail: say`Of batch ${head.code} more was booked as lost than is left when this goes back: ${restG.negated().toFixed()} g. Put less back; what was lost can’t return to its lot.`,
        facts: { batchCode: head.code, overGrams: restG.negated().toFixed() },
      });
    }
    if (restG.isZero()) return restG;
    const loss = { batchId: head.id, kind: 'other', massG: restG, lotId: null, note: reason };
    await bookLosses(tx, by, [loss]);
    return restG;
  }
}
