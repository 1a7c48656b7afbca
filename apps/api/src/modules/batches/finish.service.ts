import { Injectable } from '@nestjs/common';
import { settleBatch, type SettledOutput } from '../../domain/making';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orRefuse, RefusalError } from '../../platform/problems';
import { type BatchHead, loadBatchHead, requireOpen } from './batch-head.queries';
import type { FinishBatchDto } from './ending.dto';
import type { BatchView } from './batches.view';
import { bookLosses, endBatch } from './bookings.repository';
import { type Content, costOf, loadContents, lostMass, massOf } from './contents.queries';
import { type Counted, countOutputs, drawnLotId, lotsOf } from './count-outputs';
import { loadMakingItem } from './making-item.queries';
import { makeLots } from './make-lots';
import { loadDeviations } from './readings.queries';
import { loadPacking, proposeSplit } from './split.queries';
import { showBatch } from './show-batch';
import { say } from '../../domain/words/say';

@Injectable()
export class FinishService {
  constructor(private readonly transactions: Transactions) {}

  /** Counts and weighs what came out, makes its lots and closes the batch; all or nothing. */
  finish(batchId: string, dto: FinishBatchDto): Promise<BatchView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      const { item, rule } = await loadMakingItem(tx, head);
      const contents = await loadContents(tx, batchId);
      if (contents.length === 0) {
        throw new RefusalError({
          code: 'nothing-drawn',
          detail: say`Nothing was drawn into batch ${head.code}. Book what went in, then finish it.`,
        });
      }
      const counted = await countOutputs(tx, item, dto);
      if (head.kind === 'pack') await this.refuseUnsplit(tx, head, dto);
      await this.bookWeighedLosses(tx, by, batchId, contents, dto);
      const settled = orRefuse(
        settleBatch([...counted.outputs, ...counted.lostPieces], {
          batchCode: head.code,
          drawnG: massOf(contents),
          drawnCost: costOf(contents),
          lostG: await lostMass(tx, batchId),
          imbalanceReason: dto.imbalanceReason ?? null,
        }),
      );
      await this.bookLostPieces(tx, by, batchId, counted, settled);
      const deviations = await loadDeviations(tx, head);
      const lots = lotsOf(counted, settled, head.recipeVersionId);
      const made = await makeLots(tx, by, { batchId, contents, rule, deviations }, lots);
      await endBatch(tx, by, batchId, {
        state: 'finished',
        labourMinutes: dto.labourMinutes ?? null,
        imbalanceReason: dto.imbalanceReason ?? null,
      });
      noteInJournal(by, {
        action: 'batch.finished',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { lots: made.map(({ code }) => code), deviations: deviations.length },
      });
      return showBatch(tx, batchId, by.today.toString());
    });
  }

  /** Boxes whose pieces changed lot on the way are split first, unless a person says otherwise. */
  private async refuseUnsplit(tx: Tx, head: BatchHead, dto: FinishBatchDto): Promise<void> {
    const products = dto.outputs.filter(({ role }) => role !== 'rework');
    const boxes = products.reduce((total, { quantity }) => total + Number(quantity), 0);
    if (dto.keepTogether === true || !Number.isInteger(boxes) || boxes < 1) return;
    const runs = proposeSplit(await loadPacking(tx, head), boxes);
    if (!runs.ok || runs.value.length < 2) return;
    const counts = runs.value.map((run) => String(run.boxes)).join(' + ');
    throw new RefusalError({
      code: 'split-first',
      detail: say`In batch ${head.code} a piece changed its lot on the way. Split it into runs of ${counts} boxes, so that a recall takes fewer of them; or finish it and say that they stay together.`,
      facts: { batchCode: head.code, runs: runs.value.map((run) => run.boxes) },
    });
  }

  private async bookWeighedLosses(
    tx: Tx,
    by: By,
    batchId: string,
    contents: readonly Content[],
    dto: FinishBatchDto,
  ): Promise<void> {
    const weighed = (dto.losses ?? []).filter(({ massGrams }) => massGrams !== undefined);
    const losses = weighed.map((loss) => ({
      batchId,
      kind: loss.kind,
      massG: new Decimal(loss.massGrams ?? '0'),
      lotId: drawnLotId(contents, loss.lotCode),
      note: loss.note ?? null,
    }));
    await bookLosses(tx, by, losses);
  }

  private async bookLostPieces(
    tx: Tx,
    by: By,
    batchId: string,
    counted: Counted,
    settled: readonly SettledOutput[],
  ): Promise<void> {
    const losses = counted.lostPieces.flatMap(({ dto, quantity }, index) => {
      const massG = settled[counted.outputs.length + index]?.massG ?? new Decimal(0);
      const note = say`${quantity.toFixed()} pieces${dto.note === undefined ? '' : `: ${dto.note}`}`;
      return massG.isZero() ? [] : [{ batchId, kind: dto.kind, massG, lotId: null, note }];
    });
    await bookLosses(tx, by, losses);
  }
}
