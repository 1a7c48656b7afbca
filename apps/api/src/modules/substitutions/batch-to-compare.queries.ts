import type { RecipeContent } from '../../domain/recipe';
import { Decimal } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import { loadContents, massOf, readPlan } from '../batches';
import { contentOfVersion, findVersion } from '../recipes';

/** What a batch is meant to be without the lot that is compared: by its recipe, or by its tank. */
export interface BatchToCompare {
  readonly product: Pick<Item, 'id' | 'name'>;
  readonly content: RecipeContent;
  readonly components: readonly Item[];
  /** What its plan takes; empty where nothing was planned. */
  readonly planned: readonly { readonly itemId: string; readonly quantity: Decimal }[];
  /** Of a charge: the tank that it went into. */
  readonly tankName: string | null;
}

/** A tank is meant to hold one chocolate and nothing else: as much of it as is in the charge. */
const asOneChocolate = (item: Item, massG: Decimal): RecipeContent => ({
  lines: [{ itemId: item.id, unit: 'g', quantity: massG, role: 'base' }],
  losses: [],
  steps: [],
  yieldMassG: null,
  yieldPieces: null,
  life: { days: null, basis: null, document: null },
  dateKind: 'best_before',
  lifeAfterThawDays: null,
  labourMinutes: null,
  mouldDesignId: null,
  use: null,
});

/** @throws RefusalError not-found */
export const loadBatchToCompare = async (tx: Tx, id: string): Promise<BatchToCompare> => {
  const found = await tx.batch.findUnique({
    where: { id },
    select: {
      plan: true,
      recipeVersionId: true,
      tank: { select: { name: true } },
      outputs: { where: { outputRole: 'product' }, select: { item: true }, orderBy: { id: 'asc' } },
    },
  });
  const { plan, recipeVersionId, tank, outputs } = orNotFound(found, 'batch', id);
  if (tank !== null) {
    // By what came out, as the tank may hold another chocolate by now.
    const { item } = orNotFound(outputs[0], 'lot of batch', id);
    return {
      product: item,
      content: asOneChocolate(item, massOf(await loadContents(tx, id))),
      components: [item],
      planned: [],
      tankName: tank.name,
    };
  }
  const version = orNotFound(await findVersion(tx, recipeVersionId ?? ''), 'recipe version', id);
  return {
    product: version.recipe.item,
    content: contentOfVersion(version),
    components: version.lines.map(({ component }) => component),
    planned: readPlan(plan).lines.map(({ itemId, quantity }) => ({
      itemId,
      quantity: new Decimal(quantity),
    })),
    tankName: null,
  };
};
