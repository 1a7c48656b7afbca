import { readLosses } from '../../domain/recipe';
import { scaleRecipe, type ScalableRecipe, type ScaledRecipe } from '../../domain/scaling';
import { Decimal } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import {
  decimalFromDb,
  optionalDecimalFromDb,
  quantityText,
} from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import type { BatchKind } from './batch-head.queries';
import type { OpenBatchDto } from './batches.dto';
import { named, say } from '../../domain/words/say';

/** What a batch was opened to make; stored with it as JSON. */
export interface BatchPlan {
  readonly quantity: string | null;
  readonly trays: number | null;
  /** What the head and its parts were to make together; only in a head that was shared out. */
  readonly whole?: string;
  /** Scaled lines: what the bench weighs out. */
  readonly lines: readonly {
    readonly itemId: string;
    readonly role: string;
    readonly quantity: string;
  }[];
}

const KIND_OF_ITEM: Readonly<Record<string, BatchKind>> = {
  filling: 'cook',
  ingredient: 'cook',
  piece: 'cast',
  box: 'pack',
};

const included = {
  recipe: { include: { item: true } },
  lines: { include: { component: true }, orderBy: { position: 'asc' } },
  mouldDesign: { select: { rows: true, columns: true } },
} satisfies Prisma.RecipeVersionInclude;

export type VersionToMake = Prisma.RecipeVersionGetPayload<{ include: typeof included }>;

/** The version that is named, or the newest of the item's recipe. */
export const loadVersionToMake = async (tx: Tx, dto: OpenBatchDto): Promise<VersionToMake> => {
  const version = await tx.recipeVersion.findFirst({
    where: {
      recipe: { itemId: dto.itemId },
      ...(dto.recipeVersionId === undefined ? {} : { id: dto.recipeVersionId }),
    },
    orderBy: { number: 'desc' },
    include: included,
  });
  return orNotFound(version, 'recipe for this item', dto.recipeVersionId ?? dto.itemId);
};

export const loadVersion = async (tx: Tx, id: string): Promise<VersionToMake> =>
  orNotFound(
    await tx.recipeVersion.findUnique({ where: { id }, include: included }),
    'recipe version',
    id,
  );

/** @throws RefusalError for packaging, which is bought and never made */
export const kindOf = (version: VersionToMake): BatchKind => {
  const kind = KIND_OF_ITEM[version.recipe.item.kind];
  if (kind !== undefined) return kind;
  throw new RefusalError({
    code: 'batch-kind-unfit',
    detail: say`${version.recipe.item.name} is ${named(version.recipe.item.kind)}: it is not made in a batch.`,
  });
};

const scalable = (version: VersionToMake): ScalableRecipe => ({
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

const scaledTo = (version: VersionToMake, dto: OpenBatchDto): ScaledRecipe => {
  const recipe = scalable(version);
  if (dto.plannedTrays !== undefined) {
    return orRefuse(scaleRecipe(recipe, { kind: 'trays', trays: dto.plannedTrays }));
  }
  const quantity = new Decimal(dto.plannedQuantity ?? '0');
  return version.recipe.item.unit === 'pc'
    ? orRefuse(scaleRecipe(recipe, { kind: 'pieces', pieces: quantity }))
    : orRefuse(scaleRecipe(recipe, { kind: 'grams', massG: quantity }));
};

/** The plan of a batch: its recipe scaled to the quantity or the trays that were asked for. */
export const planOf = (version: VersionToMake, dto: OpenBatchDto): BatchPlan => {
  if (dto.plannedQuantity === undefined && dto.plannedTrays === undefined) {
    return {
      quantity: null,
      trays: null,
      lines: version.lines.map((line) => ({
        itemId: line.componentId,
        role: line.role,
        quantity: quantityText(line.quantity),
      })),
    };
  }
  const scaled = scaledTo(version, dto);
  const expected = scaled.expectedPieces ?? scaled.expectedMassG;
  return {
    quantity: dto.plannedQuantity ?? (expected === null ? null : quantityText(expected)),
    trays: scaled.trays,
    lines: scaled.lines.map((line) => ({
      itemId: line.itemId,
      role: line.role,
      quantity: quantityText(line.quantity),
    })),
  };
};

/** @param stored the JSON of a batch's `plan` column */
export const readPlan = (stored: Prisma.JsonValue): BatchPlan => {
  const plan = stored as unknown as Partial<BatchPlan>;
  return {
    quantity: plan.quantity ?? null,
    trays: plan.trays ?? null,
    lines: plan.lines ?? [],
    ...(plan.whole === undefined ? {} : { whole: plan.whole }),
  };
};
