import type { LotTagView } from '../../documents';
import type { PaperLanguage } from '../../documents';
import { wordsIn } from '../../domain/words';
import type { Allergen } from '../../domain/specification';
import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb, optionalDayFromDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { knownAllergens } from './known-allergens';

const included = {
  item: true,
  place: true,
  deliveryLine: { include: { delivery: { include: { supplier: true } } } },
  holds: { where: { releasedAt: null }, orderBy: { placedAt: 'asc' } },
} as const satisfies Prisma.LotInclude;

type TagRow = Prisma.LotGetPayload<{ include: typeof included }>;

export const lotsToTag = (tx: Tx, where: Prisma.LotWhereInput): Promise<TagRow[]> =>
  tx.lot.findMany({ where, include: included, orderBy: { code: 'asc' } });

/** Names of allergens in a paper's language. */
export const allergenNames = (codes: readonly string[], language: PaperLanguage): string[] =>
  codes.map((code) => wordsIn(language).allergens[code as Allergen]);

/** What is on the tag of a lot, as it stands now. */
export const lotTagView = async (
  tx: Tx,
  lot: TagRow,
  print: { readonly market: string; readonly language: PaperLanguage; readonly copies: number },
): Promise<LotTagView> => {
  const isFood = lot.item.kind !== 'packaging';
  const allergens = isFood
    ? await knownAllergens(tx, [lot.id], print.market)
    : { contains: [], unknown: false };
  const useBy = optionalDayFromDb(lot.useBy);
  return {
    code: lot.code,
    itemName: lot.item.name,
    quantity: lot.madeQuantity.toFixed(3),
    unit: lot.unit === 'pc' ? 'pc' : 'g',
    date: useBy ?? optionalDayFromDb(lot.bestBefore),
    dateKind: useBy === null ? 'best_before' : 'use_by',
    madeOn: dayFromDb(lot.madeOn),
    received: lot.deliveryLine !== null,
    supplierName: lot.deliveryLine?.delivery.supplier.name ?? null,
    supplierLotCode: lot.deliveryLine?.supplierLotCode ?? null,
    placeName: lot.place?.name ?? null,
    storageConditions: lot.item.storageConditions,
    allergenNames: allergenNames(allergens.contains, print.language),
    allergensUnknown: allergens.unknown,
    holdReason: lot.holds[0]?.reason ?? null,
    copies: print.copies,
  };
};
