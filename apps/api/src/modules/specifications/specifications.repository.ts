import { type MarketCode, MARKETS } from '../../domain/market';
import {
  type Allergen,
  type AllergenStatement,
  presenceOf,
  type SpecificationJson,
} from '../../domain/specification';
import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { allergenStatement, columnsOf } from './specification-json';
import type { SpecificationView } from './specifications.dto';

const asShown = { supplier: true, allergens: true } as const satisfies Prisma.SpecificationInclude;

export type SpecificationRow = Prisma.SpecificationGetPayload<{ include: typeof asShown }>;

export const specificationView = (
  row: SpecificationRow,
  approvedBy: string | null,
): SpecificationView => ({
  id: row.id,
  itemId: row.itemId,
  supplierId: row.supplierId,
  supplierName: row.supplier.name,
  number: row.number,
  state: row.state,
  ingredient: row.ingredients as Record<string, unknown>,
  allergens: allergenStatement(row),
  composition: row.composition as Record<string, unknown> | null,
  nutrition: row.nutrition as Record<string, unknown> | null,
  statements: row.statements as Record<string, unknown>,
  document: row.document,
  approvedAt: row.approvedAt?.toISOString() ?? null,
  approvedBy,
  version: row.version,
});

export const findSpecification = (
  tx: Tx,
  itemId: string,
  id: string,
): Promise<SpecificationRow | null> =>
  tx.specification.findFirst({ where: { id, itemId }, include: asShown });

export const listSpecifications = (tx: Tx, itemId: string): Promise<SpecificationRow[]> =>
  tx.specification.findMany({
    where: { itemId },
    orderBy: [{ supplier: { name: 'asc' } }, { number: 'desc' }],
    include: asShown,
  });

export const nameOfUser = async (tx: Tx, id: string | null): Promise<string | null> => {
  if (id === null) return null;
  return (await tx.user.findUnique({ where: { id }, select: { name: true } }))?.name ?? null;
};

/** Allergens that a label of this workshop must be sure of. */
const askedAllergens = async (tx: Tx): Promise<readonly Allergen[]> => {
  const workshop = await tx.workshop.findUnique({ where: { id: 1 }, select: { market: true } });
  return MARKETS[(workshop?.market ?? 'EU') as MarketCode].allergens;
};

/** What the supplier is silent about is written as unknown, so that nothing later reads it as absent. */
const writeAllergens = async (tx: Tx, id: string, json: SpecificationJson): Promise<void> => {
  const stated = json.allergens as AllergenStatement;
  const asked = new Set([...(await askedAllergens(tx)), ...(Object.keys(stated) as Allergen[])]);
  await tx.specificationAllergen.deleteMany({ where: { specificationId: id } });
  await tx.specificationAllergen.createMany({
    data: [...asked].map((allergen) => ({
      specificationId: id,
      allergen,
      presence: presenceOf(stated, allergen),
    })),
  });
};

export const createSpecification = async (
  tx: Tx,
  by: By,
  of: { itemId: string; supplierId: string; document: string | null },
  json: SpecificationJson,
): Promise<string> => {
  const id = newId();
  const latest = await tx.specification.aggregate({
    where: { itemId: of.itemId, supplierId: of.supplierId },
    _max: { number: true },
  });
  const number = (latest._max.number ?? 0) + 1;
  await tx.specification.create({
    data: { id, ...of, number, state: 'draft', createdAt: by.at, ...columnsOf(json) },
    select: { id: true },
  });
  await writeAllergens(tx, id, json);
  return id;
};

export const changeDraft = async (
  tx: Tx,
  id: string,
  document: string | null,
  json: SpecificationJson,
): Promise<void> => {
  await tx.specification.update({
    where: { id },
    data: { document, version: { increment: 1 }, ...columnsOf(json) },
    select: { id: true },
  });
  await writeAllergens(tx, id, json);
};
