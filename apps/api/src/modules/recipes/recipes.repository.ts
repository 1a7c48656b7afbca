import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { RecipeLineDto, RecipeVersionDto } from './recipes.dto';

const included = {
  recipe: { include: { item: true } },
  lines: { include: { component: true }, orderBy: { position: 'asc' } },
  mouldDesign: true,
} satisfies Prisma.RecipeVersionInclude;

export type StoredVersion = Prisma.RecipeVersionGetPayload<{ include: typeof included }>;

export const findVersion = (tx: Tx, id: string): Promise<StoredVersion | null> =>
  tx.recipeVersion.findUnique({ where: { id }, include: included });

export const findVersions = (tx: Tx, ids: readonly string[]): Promise<StoredVersion[]> =>
  tx.recipeVersion.findMany({
    where: { id: { in: [...ids] } },
    orderBy: [{ recipeId: 'asc' }, { number: 'asc' }],
    include: included,
  });

/** Newest first. */
export const listVersions = (tx: Tx, itemId: string): Promise<StoredVersion[]> =>
  tx.recipeVersion.findMany({
    where: { recipe: { itemId } },
    orderBy: { number: 'desc' },
    include: included,
  });

const columnsOf = (dto: RecipeVersionDto, yieldMassG: string | null) => ({
  yieldMassG,
  yieldPieces: dto.yieldPieces ?? null,
  expectedLosses: plain(dto.expectedLosses ?? []),
  steps: plain(dto.steps ?? []),
  shelfLifeDays: dto.shelfLifeDays ?? null,
  shelfLifeBasis: dto.shelfLifeBasis ?? null,
  shelfLifeDocument: dto.shelfLifeDocument ?? null,
  dateKind: dto.dateKind ?? 'best_before',
  lifeAfterThawDays: dto.lifeAfterThawDays ?? null,
  labourMinutes: dto.labourMinutes ?? null,
  labourRole: dto.labourRole ?? null,
  mouldDesignId: dto.mouldDesignId ?? null,
  ganacheUse: dto.ganacheUse ?? null,
  note: dto.note ?? null,
});

/** Class instances as the plain JSON that is stored. */
const plain = (value: readonly object[]): Prisma.InputJsonValue =>
  JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

const linesOf = (lines: readonly RecipeLineDto[]) =>
  lines.map((line, index) => ({
    id: newId(),
    position: index + 1,
    componentId: line.itemId,
    quantity: line.quantity,
    role: line.role,
    note: line.note ?? null,
  }));

/** Writes the next version of an item's recipe; the recipe begins with its first version. */
export const createVersion = async (
  tx: Tx,
  itemId: string,
  dto: RecipeVersionDto,
  yieldMassG: string | null,
): Promise<StoredVersion> => {
  const recipe = await tx.recipe.upsert({
    where: { itemId },
    create: { id: newId(), itemId },
    update: {},
  });
  const last = await tx.recipeVersion.aggregate({
    where: { recipeId: recipe.id },
    _max: { number: true },
  });
  return tx.recipeVersion.create({
    data: {
      id: newId(),
      recipeId: recipe.id,
      number: (last._max.number ?? 0) + 1,
      ...columnsOf(dto, yieldMassG),
      lines: { create: linesOf(dto.lines) },
    },
    include: included,
  });
};

export const replaceVersion = async (
  tx: Tx,
  id: string,
  dto: RecipeVersionDto,
  yieldMassG: string | null,
): Promise<StoredVersion> => {
  await tx.recipeLine.deleteMany({ where: { versionId: id } });
  return tx.recipeVersion.update({
    where: { id },
    data: {
      ...columnsOf(dto, yieldMassG),
      version: { increment: 1 },
      lines: { create: linesOf(dto.lines) },
    },
    include: included,
  });
};

/** Components of the newest version of every recipe, by the item that it makes. */
export const loadComponents = async (tx: Tx): Promise<Map<string, string[]>> => {
  const rows = await tx.$queryRaw<{ itemId: string; components: string[] }[]>`
    SELECT newest.item_id AS "itemId", array_agg(DISTINCT line.component_id::text) AS components
    FROM (
      SELECT DISTINCT ON (recipe.item_id) recipe.item_id, version.id
      FROM recipe JOIN recipe_version version ON version.recipe_id = recipe.id
      ORDER BY recipe.item_id, version.number DESC
    ) AS newest
    JOIN recipe_line line ON line.version_id = newest.id
    GROUP BY newest.item_id`;
  return new Map(rows.map((row) => [row.itemId, row.components]));
};
