import { Injectable } from '@nestjs/common';
import { shareOut } from '../../domain/making';
import { checkQuantity, type StockUnit } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { say, type Sentence } from '../../domain/words/say';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orRefuse, RefusalError } from '../../platform/problems';
import { type BatchHead, loadBatchHead, requireOpen } from './batch-head.queries';
import type { OpenPartDto } from './batches.dto';
import type { BatchView } from './batches.view';
import { loadVersion, type VersionToMake } from './open-batch';
import { loadParts } from './parts.queries';
import { replan } from './replan';
import { showBatch } from './show-batch';
import { openBatchOf } from './start-batch';

/**
 * A packing is made in parts as well, but by `SplitService`: which boxes become a part follows from
 * what was drawn, when it was drawn, and nobody can say it beforehand.
 */
const unfitDetail = ({ kind, code }: BatchHead): Sentence =>
  kind === 'pack'
    ? say`Batch ${code} packs boxes, and its parts are the boxes from where a lot of pieces changes. Split it there, or open another batch.`
    : say`Batch ${code} is neither cooked nor cast, and only that is made in parts. Open another batch instead.`;

/** @throws RefusalError for what isn't made in parts, and for a part of another batch */
const requireHead = (head: BatchHead, partOfId: string | null): void => {
  requireOpen(head);
  if (head.kind !== 'cook' && head.kind !== 'cast') {
    throw new RefusalError({ code: 'batch-kind-unfit', detail: unfitDetail(head) });
  }
  if (partOfId === null) return;
  throw new RefusalError({
    code: 'part-of-a-part',
    detail: say`Batch ${head.code} is itself a part of a making. Open the new part at its head.`,
    facts: { batchCode: head.code, headId: partOfId },
  });
};

/** One making in several pots or goes, because a bowl is too small or two people work at once. */
@Injectable()
export class PartsService {
  constructor(private readonly transactions: Transactions) {}

  /** Opens a part of the head's recipe version; the head keeps what was planned less its share. */
  open(headId: string, dto: OpenPartDto): Promise<BatchView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, headId);
      const stored = await tx.batch.findUniqueOrThrow({
        where: { id: headId },
        select: { partOfId: true, placeId: true },
      });
      requireHead(head, stored.partOfId);
      const version = await loadVersion(tx, head.recipeVersionId ?? '');
      const { item } = version.recipe;
      const unit = item.unit === 'pc' ? 'pc' : 'g';
      const share = orRefuse(checkQuantity(item.name, unit, new Decimal(dto.plannedQuantity)));
      await this.takeFromHead(tx, head, version, { share, unit });
      const asked = {
        itemId: item.id,
        plannedQuantity: quantityText(share),
        placeId: dto.placeId === undefined ? stored.placeId : dto.placeId,
      };
      const part = await openBatchOf(tx, by, version, asked, headId);
      noteInJournal(by, {
        action: 'batch.part-opened',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { part: part.code, planned: quantityText(share) },
      });
      return showBatch(tx, part.id, by.today.toString());
    });
  }

  /** A head that was opened without a quantity has nothing that could be shared out. */
  private async takeFromHead(
    tx: Tx,
    head: BatchHead,
    version: VersionToMake,
    { share, unit }: { readonly share: Decimal; readonly unit: StockUnit },
  ): Promise<void> {
    const parts = await loadParts(tx, head.id);
    const own = parts[0]?.planned ?? null;
    if (own === null) return;
    const whole = parts[0]?.whole ?? own;
    const kept = orRefuse(shareOut({ batchCode: head.code, unit, whole, own, parts }, share));
    await replan(tx, head.id, version, kept, whole);
  }
}
