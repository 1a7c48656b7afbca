import type { GanacheUse } from '../../domain/composition';
import { readLosses, readSteps, type RecipeContent } from '../../domain/recipe';
import type { DateKind, LifeBasis } from '../../domain/shelf-life';
import { Decimal } from '../../domain/units';
import { decimalFromDb, optionalDecimalFromDb } from '../../platform/database/decimals';
import type { RecipeVersionDto } from './recipes.dto';
import type { StoredVersion } from './recipes.repository';

const unitOf = (text: string | undefined): 'g' | 'pc' => (text === 'pc' ? 'pc' : 'g');

const optional = (text: string | null | undefined): Decimal | null =>
  text === null || text === undefined ? null : new Decimal(text);

/** A saved version as the domain reads it. */
export const contentOfVersion = (stored: StoredVersion): RecipeContent => ({
  lines: stored.lines.map((line) => ({
    itemId: line.componentId,
    unit: unitOf(line.component.unit),
    quantity: decimalFromDb(line.quantity),
    role: line.role,
  })),
  losses: readLosses(stored.expectedLosses),
  steps: readSteps(stored.steps),
  yieldMassG: optionalDecimalFromDb(stored.yieldMassG),
  yieldPieces: stored.yieldPieces,
  life: {
    days: stored.shelfLifeDays,
    basis: stored.shelfLifeBasis as LifeBasis | null,
    document: stored.shelfLifeDocument,
  },
  dateKind: stored.dateKind as DateKind,
  lifeAfterThawDays: stored.lifeAfterThawDays,
  labourMinutes: optionalDecimalFromDb(stored.labourMinutes),
  mouldDesignId: stored.mouldDesignId,
  use: stored.ganacheUse as GanacheUse | null,
});

/** A version as it was typed. `units` gives the unit of each component. */
export const contentOfDraft = (
  dto: RecipeVersionDto,
  units: ReadonlyMap<string, string>,
): RecipeContent => ({
  lines: dto.lines.map((line) => ({
    itemId: line.itemId,
    unit: unitOf(units.get(line.itemId)),
    quantity: new Decimal(line.quantity),
    role: line.role,
  })),
  losses: readLosses(dto.expectedLosses ?? []),
  steps: readSteps(dto.steps ?? []),
  yieldMassG: optional(dto.yieldGrams),
  yieldPieces: dto.yieldPieces ?? null,
  life: {
    days: dto.shelfLifeDays ?? null,
    basis: (dto.shelfLifeBasis ?? null) as LifeBasis | null,
    document: dto.shelfLifeDocument ?? null,
  },
  dateKind: (dto.dateKind ?? 'best_before') as DateKind,
  lifeAfterThawDays: dto.lifeAfterThawDays ?? null,
  labourMinutes: optional(dto.labourMinutes),
  mouldDesignId: dto.mouldDesignId ?? null,
  use: (dto.ganacheUse ?? null) as GanacheUse | null,
});
