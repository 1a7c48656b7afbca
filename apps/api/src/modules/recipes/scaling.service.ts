import { Injectable } from '@nestjs/common';
import { scaleTree, type ScalableRecipe, type ScalingTarget } from '../../domain/scaling';
import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, orRefuse } from '../../platform/problems';
import { loadNewestRecipes, scalableOf } from '../pricing';
import type { ScaleDto } from './recipes.dto';
import { findVersion, type StoredVersion } from './recipes.repository';
import type { ScaledView } from './scaling.view';

/** Scales a version, and the newest version of everything inside it. Books nothing. */
@Injectable()
export class ScalingService {
  constructor(private readonly transactions: Transactions) {}

  scale(id: string, dto: ScaleDto): Promise<ScaledView> {
    return this.transactions.read(async (tx) => {
      const version = orNotFound(await findVersion(tx, id), 'recipe version', id);
      const recipes = await recipesWithin(tx, version);
      const { itemId } = version.recipe;
      const tree = orRefuse(scaleTree(itemId, targetOf(dto), recipes));
      const ids = [...recipes.keys(), ...tree.fromStore.keys()];
      const items = await tx.item.findMany({ where: { id: { in: ids } } });
      const byId = new Map(items.map((item) => [item.id, item]));
      const nameOf = (of: string): string => byId.get(of)?.name ?? '';
      return {
        stages: tree.stages.map(({ itemId: of, recipe }) => ({
          itemId: of,
          itemName: nameOf(of),
          factor: recipe.factor.toFixed(6),
          lines: recipe.lines.map((line) => ({
            itemId: line.itemId,
            itemName: nameOf(line.itemId),
            unit: line.unit,
            role: line.role,
            quantity: quantityText(line.quantity),
            steps: line.steps.map((step) => ({
              step: step.step,
              intoGrams: quantityText(step.into),
              outGrams: quantityText(step.out),
              lostGrams: quantityText(step.lost),
            })),
          })),
          expectedGrams: recipe.expectedMassG && quantityText(recipe.expectedMassG),
          expectedPieces: recipe.expectedPieces?.toNumber() ?? null,
          piecesToMake: recipe.piecesToMake?.toNumber() ?? null,
          trays: recipe.trays,
        })),
        fromStore: [...tree.fromStore].map(([of, quantity]) => ({
          itemId: of,
          itemName: nameOf(of),
          unit: byId.get(of)?.unit ?? 'g',
          quantity: quantityText(quantity),
        })),
      };
    });
  }
}

const targetOf = (dto: ScaleDto): ScalingTarget => {
  const quantity = new Decimal(dto.quantity);
  if (dto.kind === 'grams') return { kind: 'grams', massG: quantity };
  // A tray count that isn't whole is refused by the domain, so it must reach it as it is.
  if (dto.kind === 'trays') return { kind: 'trays', trays: quantity.toNumber() };
  return { kind: 'pieces', pieces: quantity };
};

const recipesWithin = async (
  tx: Tx,
  version: StoredVersion,
): Promise<Map<string, ScalableRecipe>> => {
  const recipes = new Map([[version.recipe.itemId, scalableOf(version)]]);
  let level = version.lines.map((line) => line.componentId);
  while (level.length > 0) {
    const found = await loadNewestRecipes(
      tx,
      level.filter((id) => !recipes.has(id)),
    );
    for (const row of found) recipes.set(row.recipe.itemId, scalableOf(row));
    level = found.flatMap((row) => row.lines.map((line) => line.componentId));
  }
  return recipes;
};
