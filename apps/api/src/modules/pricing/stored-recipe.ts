import type { LossKind, ScalableRecipe, StepLoss } from '../../domain/scaling';
import { Decimal } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { decimalFromDb, optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';

const included = {
  recipe: { include: { item: true } },
  lines: { include: { component: true }, orderBy: { position: 'asc' } },
  mouldDesign: true,
} satisfies Prisma.RecipeVersionInclude;

export type StoredRecipe = Prisma.RecipeVersionGetPayload<{ include: typeof included }>;

/** The newest version of each item's recipe: what is made from now on. */
export const loadNewestRecipes = async (tx: Tx): Promise<StoredRecipe[]> => {
  const versions = await tx.recipeVersion.findMany({
    distinct: ['recipeId'],
    orderBy: [{ recipeId: 'asc' }, { number: 'desc' }],
    include: included,
  });
  return versions;
};

/** Expected losses as stored; an entry that can't be read is no expectation. */
const lossesOf = (stored: Prisma.JsonValue): StepLoss[] =>
  (Array.isArray(stored) ? stored : []).flatMap((entry): StepLoss[] => {
    if (typeof entry !== 'object' || entry === null || Array.isArray(entry)) return [];
    const { step, kind, percent, roles } = entry;
    if (typeof kind !== 'string') return [];
    if (typeof percent !== 'string' && typeof percent !== 'number') return [];
    return [
      {
        step: typeof step === 'string' ? step : '',
        kind: kind as LossKind,
        percent: new Decimal(percent),
        ...(Array.isArray(roles) ? { roles: roles.map(String) } : {}),
      },
    ];
  });

export const scalableOf = (version: StoredRecipe): ScalableRecipe => ({
  lines: version.lines.map((line) => ({
    itemId: line.componentId,
    unit: line.component.unit === 'pc' ? 'pc' : 'g',
    quantity: decimalFromDb(line.quantity),
    role: line.role,
  })),
  losses: lossesOf(version.expectedLosses),
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
  const steps = Array.isArray(version.steps) ? version.steps : [];
  const hours = steps.reduce((total: number, step) => {
    if (typeof step !== 'object' || step === null || Array.isArray(step)) return total;
    const rest = Number(step['restHours'] ?? 0);
    return Number.isFinite(rest) && rest > 0 ? total + rest : total;
  }, 0);
  return Math.ceil(hours / HOURS_PER_DAY);
};
