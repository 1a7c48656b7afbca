import { Injectable } from '@nestjs/common';
import { checkBalance } from '../../domain/making';
import { Decimal } from '../../domain/units';
import { decimalFromDb, decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { type BatchHead, loadBatchHead, loadDraws } from './batch-head.queries';
import type { CorrectionDto } from './ending.dto';
import type { BatchView } from './batches.view';
import { bookLosses, bookReversal } from './bookings.repository';
import { bringDatesForward } from './bring-dates-forward';
import { isAhead } from './circle.queries';
import { loadContents, lostMass, massOf } from './contents.queries';
import { drawIntoBatch, reversibleDraw } from './draws.service';
import { correctOutputs, madeMass } from './correct-outputs';
import { drawnLotId } from './count-outputs';
import { showBatch } from './show-batch';
import { Substitutes } from './substitutes.port';
import { named, say } from '../../domain/words/say';

/**
 * Puts a finished batch right. What was written stays: a draw or a loss is taken back by its exact
 * opposite and booked again as it really was, with the reason. Weights must still balance. What its
 * lots cost stays as it was reckoned when they were made.
 */
@Injectable()
export class CorrectionsService {
  constructor(
    private readonly transactions: Transactions,
    private readonly substitutes: Substitutes,
  ) {}

  correct(batchId: string, dto: CorrectionDto): Promise<BatchView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      this.requireFinished(head);
      await this.takeBackDraws(tx, by, batchId, dto);
      for (const draw of dto.draws ?? []) {
        await this.refuseCircle(tx, head, draw.lotCode);
        await drawIntoBatch(tx, by, head, draw, dto.reason, this.substitutes);
      }
      await this.correctLosses(tx, by, head, dto);
      const made = await correctOutputs(tx, by, head, dto);
      await this.requireBalance(tx, head);
      const redated = await bringDatesForward(tx, by, head);
      noteInJournal(by, {
        action: 'batch.corrected',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: {
          reason: dto.reason,
          reversedDraws: dto.reversedDrawIds ?? [],
          draws: (dto.draws ?? []).map(({ lotCode, quantity }) => ({
            lot: lotCode ?? null,
            quantity,
          })),
          reversedLosses: dto.reversedLossIds ?? [],
          reversedOutputs: dto.reversedOutputIds ?? [],
          made,
          redated,
        },
      });
      return showBatch(tx, batchId, by.today.toString());
    });
  }

  private requireFinished(head: BatchHead): void {
    if (head.state === 'finished') return;
    throw new RefusalError({
      code: 'batch-not-finished',
      detail: say`Batch ${head.code} is ${named(head.state)}; corrections are for finished ones. In an open batch put the draw back and draw again.`,
      facts: { batchCode: head.code, state: head.state },
    });
  }

  private async takeBackDraws(tx: Tx, by: By, batchId: string, dto: CorrectionDto): Promise<void> {
    const ids = [...new Set(dto.reversedDrawIds ?? [])];
    const draws = ids.length === 0 ? [] : await loadDraws(tx, batchId);
    for (const id of ids) await bookReversal(tx, by, reversibleDraw(draws, id), dto.reason);
  }

  private async refuseCircle(tx: Tx, head: BatchHead, code: string | undefined): Promise<void> {
    if (code === undefined || !(await isAhead(tx, head.id, code))) return;
    throw new RefusalError({
      code: 'circle',
      detail: say`Lot ${code} was made with what batch ${head.code} gave, so it can’t have gone into it. Look at the code on the tag again.`,
      facts: { batchCode: head.code, lotCode: code },
    });
  }

  private async correctLosses(tx: Tx, by: By, head: BatchHead, dto: CorrectionDto): Promise<void> {
    for (const id of new Set(dto.reversedLossIds ?? [])) {
      const found = await tx.batchLoss.findFirst({
        where: { id, batchId: head.id, reversesId: null },
        include: { reversedBy: { select: { id: true } } },
      });
      const loss = orNotFound(found, 'loss of this batch', id);
      if (loss.reversedBy !== null) {
        throw new RefusalError({
          code: 'already-reversed',
          detail: say`This loss of ${loss.massG.toFixed()} g was taken back already.`,
        });
      }
      await tx.batchLoss.create({
        data: {
          id: newId(),
          batchId: head.id,
          kind: loss.kind,
          massG: decimalToDb(decimalFromDb(loss.massG).negated()),
          lotId: loss.lotId,
          reversesId: id,
          note: dto.reason,
          at: by.at,
          userId: by.userId,
        },
        select: { id: true },
      });
    }
    const contents = await loadContents(tx, head.id);
    const losses = (dto.losses ?? []).map((loss) => ({
      batchId: head.id,
      kind: loss.kind,
      massG: new Decimal(loss.massGrams),
      lotId: drawnLotId(contents, loss.lotCode),
      note: loss.note ?? dto.reason,
    }));
    await bookLosses(tx, by, losses);
  }

  private async requireBalance(tx: Tx, head: BatchHead): Promise<void> {
    const batch = await tx.batch.findUniqueOrThrow({ where: { id: head.id } });
    orRefuse(
      checkBalance(
        {
          batchCode: head.code,
          drawnG: massOf(await loadContents(tx, head.id)),
          lostG: await lostMass(tx, head.id),
          imbalanceReason: batch.imbalanceReason,
        },
        await madeMass(tx, head.id),
      ),
    );
  }
}
