import { readLosses, readSteps } from '../../domain/recipe';
import type { ScalableRecipe } from '../../domain/scaling';
import { Decimal, sum } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { decimalFromDb, optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';

const included = {
  recipe: { include: { item: true } },
  lines: { include: { component: true }, orderBy: { position: 'asc' } },
  mouldDesign: true,
} satisfies Prisma.RecipeVersionInclude;

export type StoredRecipe = Prisma.RecipeVersionGetPayload<{ include: typeof included }>;

/** The newest version of each item's recipe, or of some items': what is made from now on. */
export const loadNewestRecipes = (tx: Tx, itemIds?: readonly string[]): Promise<StoredRecipe[]> =>
  tx.recipeVersion.findMany({
    ...(itemIds === undefined ? {} : { where: { recipe: { itemId: { in: [...itemIds] } } } }),
    distinct: ['recipeId'],
    orderBy: [{ recipeId: 'asc' }, { number: 'desc' }],
    include: included,
  });

export const scalableOf = (version: StoredRecipe): ScalableRecipe => ({
  lines: version.lines.map((line) => ({
    itemId: line.componentId,
    unit: line.component.unit === 'pc' ? 'pc' : 'g',
    quantity: decimalFromDb(line.quantity),
    role: line.role,
  })),
  losses: readLosses(version.expectedLosses),
  yieldMassG: optionalDecimalFromDb(version.yieldMassG),
  yieldPieces: version.yieldPieces,
  cavitiesPerTray:
    version.mouldDesign === null ? null : version.mouldDesign.rows * version.mouldDesign.columns,
});

/** Who works when a recipe doesn't say. */
export const USUAL_ROLE = 'maker';

const HOURS_PER_DAY = 24;

/** Days of rest after a making: the hours that its steps name, in started days. */
export const restDaysOf = (version: StoredRecipe): number => {
  const hours = readSteps(version.steps).map(({ restHours }) => restHours ?? new Decimal(0));
  return sum(hours).dividedBy(HOURS_PER_DAY).ceil().toNumber();
};
