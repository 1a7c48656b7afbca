import { Injectable } from '@nestjs/common';
import type { BoxRun } from '../../domain/split';
import { apportion, Decimal, sum } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orRefuse, RefusalError } from '../../platform/problems';
import { nextCode } from '../codes';
import { loadLotForUseById, takeFromLot } from '../stock';
import { type BatchHead, findBatchHead, loadBatchHead, requireOpen } from './batch-head.queries';
import { bookDraw, bookReversal } from './bookings.repository';
import { readPlan } from './open-batch';
import { dealOut, type Part } from './deal-out';
import { loadPacking, type PackedDraw, proposeSplit } from './split.queries';
import type { SplitView } from './split.view';
import { say } from '../../domain/words/say';

const viewOf = (
  boxes: number,
  runs: readonly BoxRun[],
  batchIds: readonly string[],
): SplitView => ({
  boxes,
  runs: runs.map(({ firstBox, lastBox, boxes: count, lots }, index) => ({
    firstBox,
    lastBox,
    boxes: count,
    lotCodes: [...lots],
    batchId: batchIds[index] ?? null,
  })),
});

const requirePacking = (head: BatchHead): void => {
  if (head.kind === 'pack') return;
  throw new RefusalError({
    code: 'batch-kind-unfit',
    detail: say`Batch ${head.code} packs nothing: only boxes are split at a change of pieces.`,
  });
};

@Injectable()
export class SplitService {
  constructor(private readonly transactions: Transactions) {}

  /** Where the lot of a piece changed on the way: one run of boxes each keeps a recall small. */
  propose(batchId: string, boxes: number): Promise<SplitView> {
    return this.transactions.read(async (tx) => {
      const head = await findBatchHead(tx, batchId);
      requirePacking(head);
      const runs = orRefuse(proposeSplit(await loadPacking(tx, head), boxes));
      return viewOf(boxes, runs, []);
    });
  }

  /**
   * Splits an open packing into a batch for each run of boxes. The first run stays in the batch;
   * each other one gets a batch of its own, with its share of what was drawn.
   */
  split(batchId: string, boxes: number): Promise<SplitView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      requirePacking(head);
      const packing = await loadPacking(tx, head);
      const runs = orRefuse(proposeSplit(packing, boxes));
      if (runs.length < 2) return viewOf(boxes, runs, [batchId]);
      const reason = say`split of ${boxes} boxes into ${runs.length} runs`;
      for (const draw of packing.draws) await bookReversal(tx, by, draw, reason);
      const ids = await this.openBatches(tx, by, head, runs);
      const dealt = this.dealAll(packing.draws, runs);
      for (const [index, parts] of dealt.entries()) {
        for (const part of parts) await this.redraw(tx, by, ids[index] ?? batchId, part, reason);
      }
      noteInJournal(by, {
        action: 'batch.split',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { boxes, runs: runs.map((run) => run.boxes) },
      });
      return viewOf(boxes, runs, ids);
    });
  }

  private dealAll(draws: readonly PackedDraw[], runs: readonly BoxRun[]): Part[][] {
    const items = [...new Set(draws.map(({ itemId }) => itemId))];
    const weights = runs.map((run) => new Decimal(run.boxes));
    const dealt = items.map((item) => {
      const own = draws.filter(({ itemId }) => itemId === item);
      const total = sum(own.map(({ quantity }) => quantity));
      return dealOut(own, apportion(total, weights, own[0]?.unit === 'pc' ? 0 : 3));
    });
    return runs.map((_, index) => dealt.flatMap((parts) => parts[index] ?? []));
  }

  private async openBatches(
    tx: Tx,
    by: By,
    head: BatchHead,
    runs: readonly BoxRun[],
  ): Promise<string[]> {
    const first = await tx.batch.findUniqueOrThrow({ where: { id: head.id } });
    const plan = { ...readPlan(first.plan), splitFrom: head.code };
    const ids = [head.id];
    for (const run of runs.slice(1)) {
      const id = newId();
      await tx.batch.create({
        data: {
          id,
          code: await nextCode(tx, by, 'batch'),
          kind: 'pack',
          recipeVersionId: head.recipeVersionId,
          operatorId: by.userId,
          placeId: first.placeId,
          plan: { ...plan, quantity: run.boxes.toFixed(3) },
          openedAt: by.at,
        },
        select: { id: true },
      });
      ids.push(id);
    }
    return ids;
  }

  private async redraw(tx: Tx, by: By, batchId: string, part: Part, reason: string): Promise<void> {
    const lot = await loadLotForUseById(tx, part.draw.lotId);
    const share = takeFromLot(lot, part.quantity, by.today);
    await bookDraw(tx, by, { batchId, lotId: lot.id, role: part.draw.role, share, reason });
  }
}
