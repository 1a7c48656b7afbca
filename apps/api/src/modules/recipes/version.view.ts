import { quantityText } from '../../platform/database/decimals';
import type { ExpectedLossDto, RecipeStepDto } from './recipes.dto';
import type { StoredVersion } from './recipes.repository';
import type { RecipeVersionView } from './recipes.view';

export const versionView = (stored: StoredVersion): RecipeVersionView => ({
  id: stored.id,
  itemId: stored.recipe.itemId,
  itemName: stored.recipe.item.name,
  itemKind: stored.recipe.item.kind,
  number: stored.number,
  frozen: stored.frozenAt !== null,
  frozenAt: stored.frozenAt?.toISOString() ?? null,
  lines: stored.lines.map((line) => ({
    itemId: line.componentId,
    itemName: line.component.name,
    itemKind: line.component.kind,
    unit: line.component.unit,
    quantity: quantityText(line.quantity),
    role: line.role,
    note: line.note,
  })),
  expectedLosses: stored.expectedLosses as unknown as ExpectedLossDto[],
  steps: stored.steps as unknown as RecipeStepDto[],
  yieldGrams: stored.yieldMassG === null ? null : quantityText(stored.yieldMassG),
  yieldPieces: stored.yieldPieces,
  shelfLifeDays: stored.shelfLifeDays,
  shelfLifeBasis: stored.shelfLifeBasis,
  shelfLifeDocument: stored.shelfLifeDocument,
  dateKind: stored.dateKind,
  lifeAfterThawDays: stored.lifeAfterThawDays,
  labourMinutes: stored.labourMinutes?.toFixed(2) ?? null,
  labourRole: stored.labourRole,
  mouldDesignId: stored.mouldDesignId,
  ganacheUse: stored.ganacheUse,
  note: stored.note,
  version: stored.version,
});
