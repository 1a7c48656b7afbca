import { Injectable } from '@nestjs/common';
import type { BoxRun } from '../../domain/split';
import { apportion, Decimal, sum } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orRefuse, RefusalError } from '../../platform/problems';
import { loadLotForUseById, takeFromLot } from '../stock';
import { type BatchHead, findBatchHead, loadBatchHead, requireOpen } from './batch-head.queries';
import { bookDraw, bookReversal } from './bookings.repository';
import { loadVersion } from './open-batch';
import { loadParts } from './parts.queries';
import { replan } from './replan';
import { openBatchOf } from './start-batch';
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
   * each other one is a part of the making with its share of what was drawn, as a pot of a filling
   * is. It is opened here and not by `PartsService` as it gets goods and no plan: its size follows
   * from the draws, and is only known once they are booked.
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

  /** The first run stays in the batch; each other one is a part of the same making. */
  private async openBatches(
    tx: Tx,
    by: By,
    head: BatchHead,
    [first, ...others]: readonly BoxRun[],
  ): Promise<string[]> {
    const { partOfId, placeId } = await tx.batch.findUniqueOrThrow({
      where: { id: head.id },
      select: { partOfId: true, placeId: true },
    });
    const headId = partOfId ?? head.id;
    const version = await loadVersion(tx, head.recipeVersionId ?? '');
    const [kept] = await loadParts(tx, headId);
    const whole = partOfId === null ? (kept?.whole ?? kept?.planned ?? null) : null;
    await replan(tx, head.id, version, new Decimal(first?.boxes ?? 0), whole);
    const ids = [head.id];
    for (const { boxes } of others) {
      const { itemId } = version.recipe;
      const asked = { itemId, plannedQuantity: quantityText(new Decimal(boxes)), placeId };
      ids.push((await openBatchOf(tx, by, version, asked, headId)).id);
    }
    return ids;
  }

  private async redraw(tx: Tx, by: By, batchId: string, part: Part, reason: string): Promise<void> {
    const lot = await loadLotForUseById(tx, part.draw.lotId);
    const share = takeFromLot(lot, part.quantity, by.today);
    await bookDraw(tx, by, { batchId, lotId: lot.id, role: part.draw.role, share, reason });
  }
}
