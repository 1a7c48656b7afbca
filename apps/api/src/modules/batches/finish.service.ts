import { Injectable } from '@nestjs/common';
import { type CountedOutput, settleBatch, type SettledOutput } from '../../domain/making';
import { checkQuantity } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { writeJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { type BatchHead, loadBatchHead, requireOpen } from './batch-head.queries';
import type { FinalLossDto, FinishBatchDto, OutputDto } from './batches.dto';
import type { BatchView } from './batches.view';
import { bookLosses, endBatch } from './bookings.repository';
import { type Content, costOf, loadContents, lostMass, massOf } from './contents.queries';
import { loadMakingItem, type MakingItem } from './making-item.queries';
import { type LotToMake, makeLots } from './make-lots';
import { loadDeviations } from './readings.queries';
import { loadPacking, proposeSplit } from './split.queries';
import { showBatch } from './show-batch';

interface Counted {
  readonly outputs: readonly (CountedOutput & {
    readonly dto: OutputDto;
    readonly item: MakingItem;
  })[];
  /** Rejects and samples that were counted, not weighed. */
  readonly lostPieces: readonly (CountedOutput & { readonly dto: FinalLossDto })[];
}

const countedOutput = (item: MakingItem, dto: OutputDto): CountedOutput => ({
  itemName: item.name,
  unit: item.unit,
  quantity: orRefuse(checkQuantity(item.name, item.unit, new Decimal(dto.quantity))),
  weighedG: dto.massGrams === undefined ? null : new Decimal(dto.massGrams),
  nominalMassG: item.nominalMassG,
  lost: false,
});

const refuseUnfit = (detail: string): RefusalError =>
  new RefusalError({ code: 'batch-kind-unfit', detail });

/** Rework may be any other item; a product is what the recipe makes. */
const itemOf = async (tx: Tx, product: MakingItem, dto: OutputDto): Promise<MakingItem> => {
  if (dto.role !== 'rework') {
    if (dto.itemId === undefined || dto.itemId === product.id) return product;
    throw refuseUnfit(
      `This batch makes ${product.name}. Book anything else that came out of it as rework.`,
    );
  }
  if (dto.itemId === undefined || dto.itemId === product.id) return product;
  const found = await tx.item.findUnique({ where: { id: dto.itemId } });
  const item = orNotFound(found, 'item', dto.itemId);
  return {
    id: item.id,
    name: item.name,
    unit: item.unit === 'pc' ? 'pc' : 'g',
    nominalMassG: optionalDecimalFromDb(item.nominalMassG),
  };
};

const countOutputs = async (tx: Tx, product: MakingItem, dto: FinishBatchDto): Promise<Counted> => {
  const outputs = [];
  for (const output of dto.outputs) {
    const item = await itemOf(tx, product, output);
    outputs.push({ ...countedOutput(item, output), dto: output, item });
  }
  const lostPieces = (dto.losses ?? []).flatMap((loss) => {
    if ((loss.pieces === undefined) === (loss.massGrams === undefined)) {
      throw refuseUnfit('Give a loss either in grams or as a number of pieces.');
    }
    if (loss.pieces === undefined) return [];
    if (product.unit !== 'pc') {
      throw refuseUnfit(`${product.name} is kept by weight: give the loss in grams.`);
    }
    const quantity = new Decimal(loss.pieces);
    const { name: itemName, unit, nominalMassG } = product;
    return [{ itemName, unit, quantity, weighedG: null, nominalMassG, lost: true, dto: loss }];
  });
  return { outputs, lostPieces };
};

/** The drawn lot that a loss was taken from, as the strained tea. */
export const drawnLotId = (
  contents: readonly Content[],
  code: string | undefined,
): string | null => {
  if (code === undefined) return null;
  const content = contents.find(({ lotCode }) => lotCode === code);
  return orNotFound(content, 'lot drawn into this batch', code).lotId;
};

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
          detail: `Nothing was drawn into batch ${head.code}. Book what went in, then finish it.`,
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
      await writeJournal(tx, by, {
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
    const counts = runs.value.map((run) => `${String(run.boxes)}`).join(' + ');
    throw new RefusalError({
      code: 'split-first',
      detail:
        `In batch ${head.code} a piece changed its lot on the way. Split it into runs of ${counts} ` +
        'boxes, so that a recall takes fewer of them; or finish it and say that they stay together.',
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
      const note = `${quantity.toFixed()} pieces${dto.note === undefined ? '' : `: ${dto.note}`}`;
      return massG.isZero() ? [] : [{ batchId, kind: dto.kind, massG, lotId: null, note }];
    });
    await bookLosses(tx, by, losses);
  }
}

const lotsOf = (
  counted: Counted,
  settled: readonly SettledOutput[],
  recipeVersionId: string | null,
): LotToMake[] =>
  counted.outputs.flatMap(({ dto, item }, index) => {
    const made = settled[index];
    if (made === undefined) return [];
    const role = dto.role === 'rework' ? 'rework' : 'product';
    return [
      {
        itemId: item.id,
        unit: item.unit,
        role,
        recipeVersionId: role === 'product' ? recipeVersionId : null,
        placeId: dto.placeId ?? null,
        made,
      },
    ];
  });
