import { atPrice } from '../../domain/costing';
import type { SupplyTerms } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type LoadedProblem, USUAL_LEAD_DAYS } from './plan-problem.queries';

interface LastRow {
  readonly item: string;
  readonly supplier: string;
}

/** Who brought each item last and had it accepted. */
export const lastSuppliers = (tx: Tx): Promise<LastRow[]> => tx.$queryRaw<LastRow[]>`
  SELECT DISTINCT ON (line.item_id) line.item_id::text AS item, supplier.name AS supplier
  FROM delivery_line line
  JOIN delivery ON delivery.id = line.delivery_id
  JOIN supplier ON supplier.id = delivery.supplier_id
  WHERE line.accepted
  ORDER BY line.item_id, delivery.received_at DESC, line.id DESC`;

/**
 * Terms of every item that is bought, with today's replacement price of one gram or piece. Where
 * nobody wrote terms down, it is bought from whoever brought it last, in any quantity, within the
 * days that the plan reckons with.
 */
export const loadTerms = async (tx: Tx, loaded: LoadedProblem): Promise<SupplyTerms[]> => {
  const suppliers = new Map((await tx.supplier.findMany()).map(({ id, name }) => [id, name]));
  const priceOf = (item: string): Pick<SupplyTerms, 'pricePerUnit'> => {
    const price = loaded.basis.costs.prices.get(item);
    return price ? { pricePerUnit: atPrice(price, new Decimal(1)) } : {};
  };
  const written = (await tx.supplyTerm.findMany()).map((term): SupplyTerms => {
    const pack = optionalDecimalFromDb(term.packQuantity);
    return {
      item: term.itemId,
      supplier: suppliers.get(term.supplierId) ?? term.supplierId,
      leadDays: term.leadDays,
      ...(pack ? { packQuantity: pack } : {}),
      ...priceOf(term.itemId),
    };
  });
  const known = new Set(written.map(({ item }) => item));
  const usual = (await lastSuppliers(tx))
    .filter(({ item }) => !known.has(item))
    .map((row): SupplyTerms => ({ ...row, leadDays: USUAL_LEAD_DAYS, ...priceOf(row.item) }));
  return [...written, ...usual];
};
