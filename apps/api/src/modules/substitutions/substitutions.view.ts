import { type Decimal } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import { decimalFromDb, moneyText, quantityText } from '../../platform/database/decimals';
import type { LotForUse } from '../stock';
import type { Compared } from './compare-lot';
import type { SubstitutionView } from './substitutions.dto';

const GRAMS_PER_KG = 1000;

const costAtPrice = (item: Item, quantity: Decimal): string | null => {
  if (item.replacementPrice === null) return null;
  const price = decimalFromDb(item.replacementPrice).times(quantity);
  return moneyText(item.unit === 'pc' ? price : price.dividedBy(GRAMS_PER_KG));
};

const costOfLot = (lot: LotForUse, quantity: Decimal): string | null => {
  const { onHand } = lot;
  if (onHand.quantity.isZero()) return null;
  return moneyText(onHand.cost.times(quantity).dividedBy(onHand.quantity));
};

/** What changes, in the words and figures that a person is shown and the journal keeps. */
export const differencesOf = (
  compared: Compared,
  lot: LotForUse,
): Pick<SubstitutionView, 'allergens' | 'figures' | 'originalCost' | 'substituteCost'> => {
  const { original, planned } = compared;
  return {
    allergens: compared.allergens.map((row) => ({ ...row })),
    figures: compared.figures.map((row) => ({
      figure: row.figure,
      before: row.before?.toFixed(2) ?? null,
      after: row.after?.toFixed(2) ?? null,
    })),
    originalCost: original && planned ? costAtPrice(original, planned) : null,
    substituteCost: planned && costOfLot(lot, planned),
  };
};

export const substitutionView = (
  compared: Compared,
  lot: LotForUse,
  notUsable: string | null,
): SubstitutionView => ({
  originalName: compared.original?.name ?? null,
  substituteName: lot.itemName,
  lotCode: lot.code,
  plannedQuantity: compared.planned && quantityText(compared.planned),
  onHandQuantity: quantityText(lot.onHand.quantity),
  notUsable,
  ...differencesOf(compared, lot),
  cautions: compared.cautions.map((row) => ({ ...row })),
});
