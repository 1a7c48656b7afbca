import type { CountedOutput, SettledOutput } from '../../domain/making';
import { checkQuantity } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import type { Content } from './contents.queries';
import type { FinalLossDto, FinishBatchDto, OutputDto } from './ending.dto';
import type { MakingItem } from './making-item.queries';
import type { LotToMake } from './make-lots';
import { say, type Sentence } from '../../domain/words/say';

/** What the bench counted and weighed at the end of a batch. */
export interface Counted {
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

const refuseUnfit = (detail: Sentence): RefusalError =>
  new RefusalError({ code: 'batch-kind-unfit', detail });

/** Rework may be any other item; a product is what the recipe makes. */
const itemOf = async (tx: Tx, product: MakingItem, dto: OutputDto): Promise<MakingItem> => {
  if (dto.role !== 'rework') {
    if (dto.itemId === undefined || dto.itemId === product.id) return product;
    throw refuseUnfit(
      say`This batch makes ${product.name}. Book anything else that came out of it as rework.`,
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

export const countOutputs = async (
  tx: Tx,
  product: MakingItem,
  dto: FinishBatchDto,
): Promise<Counted> => {
  const outputs = [];
  for (const output of dto.outputs) {
    const item = await itemOf(tx, product, output);
    outputs.push({ ...countedOutput(item, output), dto: output, item });
  }
  const lostPieces = (dto.losses ?? []).flatMap((loss) => {
    if ((loss.pieces === undefined) === (loss.massGrams === undefined)) {
      throw refuseUnfit(say`Give a loss either in grams or as a number of pieces.`);
    }
    if (loss.pieces === undefined) return [];
    if (product.unit !== 'pc') {
      throw refuseUnfit(say`${product.name} is kept by weight: give the loss in grams.`);
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

/** The lots that were counted, each with the weight and cost that were settled for it. */
export const lotsOf = (
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
