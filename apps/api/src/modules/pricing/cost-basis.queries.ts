import {
  recipeFacts,
  type CostBasis,
  type LabourRate,
  type OverheadRule,
  type RecipeFacts,
  type UnitPrice,
} from '../../domain/costing';
import type { VatRate } from '../../domain/pricing';
import { Decimal } from '../../domain/units';
import type { Item, Workshop } from '../../generated/prisma/client';
import { dayFromDb } from '../../platform/database/days';
import { decimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orRefuse } from '../../platform/problems';
import { loadWorkshop } from '../workshop';
import { loadNewestRecipes, scalableOf, USUAL_ROLE, type StoredRecipe } from './stored-recipe';

/** Everything that costs and prices of the workshop are reckoned from, on a day. */
export interface LoadedBasis {
  readonly costs: CostBasis;
  readonly vat: readonly VatRate[];
  readonly items: ReadonlyMap<string, Item>;
  readonly recipes: ReadonlyMap<string, StoredRecipe>;
  readonly workshop: Workshop;
}

export const overheadOf = (workshop: Workshop): OverheadRule => {
  const value = decimalFromDb(workshop.overheadValue);
  if (workshop.overheadRule === 'per_piece') return { kind: 'per_piece', amountPerPiece: value };
  if (workshop.overheadRule === 'percent') return { kind: 'percent', percent: value };
  return { kind: 'per_hour', ratePerHour: value };
};

export const loadRates = async (tx: Tx): Promise<LabourRate[]> => {
  const rows = await tx.labourRate.findMany();
  return rows.map(({ role, ratePerHour, fromDay }) => ({
    role,
    ratePerHour: decimalFromDb(ratePerHour),
    fromDay: dayFromDb(fromDay),
  }));
};

export const loadVatRates = async (tx: Tx): Promise<VatRate[]> => {
  const rows = await tx.vatRate.findMany();
  return rows.map(({ productClass, ratePercent, fromDay }) => ({
    productClass,
    ratePercent: decimalFromDb(ratePercent),
    fromDay: dayFromDb(fromDay),
  }));
};

interface LastPaid {
  readonly itemId: string;
  readonly unitPrice: string;
}

/** What one gram or piece cost when it was last accepted from a supplier. */
const loadLastPaid = async (
  tx: Tx,
  day: string,
  itemIds: readonly string[],
): Promise<Map<string, Decimal>> => {
  const rows = await tx.$queryRaw<LastPaid[]>`
    SELECT DISTINCT ON (line.item_id) line.item_id AS "itemId",
      (line.price / line.quantity)::text AS "unitPrice"
    FROM delivery_line line JOIN delivery ON delivery.id = line.delivery_id
    WHERE line.item_id = ANY(${[...itemIds]}::uuid[]) AND line.accepted
      AND delivery.received_on <= ${day}::date
    ORDER BY line.item_id, delivery.received_on DESC, delivery.received_at DESC`;
  return new Map(rows.map(({ itemId, unitPrice }) => [itemId, new Decimal(unitPrice)]));
};

const GRAMS_PER_KG = 1000;

/** The replacement price that a person entered; failing that, what was last paid. */
const priceOfItem = (item: Item, lastPaid: Decimal | undefined): UnitPrice | undefined => {
  const per = item.unit === 'g' ? 'kg' : 'pc';
  if (item.replacementPrice) return { amount: decimalFromDb(item.replacementPrice), per };
  if (!lastPaid) return undefined;
  return { amount: per === 'kg' ? lastPaid.times(GRAMS_PER_KG) : lastPaid, per };
};

const factsOf = (version: StoredRecipe): RecipeFacts => {
  const minutes = version.labourMinutes ? decimalFromDb(version.labourMinutes) : new Decimal(0);
  const { item } = version.recipe;
  const labour = [{ role: version.labourRole ?? USUAL_ROLE, minutes }];
  return orRefuse(recipeFacts(item.id, scalableOf(version), labour, item.kind === 'piece'));
};

interface Known {
  readonly items: readonly Item[];
  readonly recipes: readonly StoredRecipe[];
}

/**
 * @param known what costs are asked of and everything inside it; without, all that there is
 */
export const loadBasis = async (tx: Tx, day: string, known?: Known): Promise<LoadedBasis> => {
  const workshop = await loadWorkshop(tx);
  const items = known?.items ?? (await tx.item.findMany());
  const lastPaid = await loadLastPaid(
    tx,
    day,
    items.map(({ id }) => id),
  );
  const prices = new Map<string, UnitPrice>();
  for (const item of items) {
    const price = priceOfItem(item, lastPaid.get(item.id));
    if (price) prices.set(item.id, price);
  }
  const versions = known?.recipes ?? (await loadNewestRecipes(tx));
  const recipes = new Map(versions.map((version) => [version.recipe.itemId, version]));
  const costs: CostBasis = {
    day,
    recipes: new Map([...recipes].map(([id, version]) => [id, factsOf(version)])),
    prices,
    rates: await loadRates(tx),
    overhead: overheadOf(workshop),
  };
  const vat = await loadVatRates(tx);
  return { costs, vat, items: new Map(items.map((item) => [item.id, item])), recipes, workshop };
};
