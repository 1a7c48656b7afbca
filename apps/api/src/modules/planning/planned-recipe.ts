import type { RecipeFacts } from '../../domain/costing';
import type { PlanRecipe, ResourceUse } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import { restDaysOf, type StoredRecipe } from '../pricing';
import type { PlanningSettingsDto } from './planning-settings.dto';

export const PEOPLE = 'people';
export const tankResource = (tankId: string): string => `tank:${tankId}`;

const STEP_OF_KIND: Readonly<Record<string, PlanRecipe['step']>> = { piece: 'cast', box: 'pack' };

/** What a making of one gram, cavity or box takes of people and of the tanks that pour its shell. */
const usesOf = (
  version: StoredRecipe,
  units: Decimal,
  tanksOf: ReadonlyMap<string, readonly string[]>,
  settings: PlanningSettingsDto,
): ResourceUse[] => {
  const minutes = version.labourMinutes?.toNumber() ?? 0;
  const people = { resource: PEOPLE, minutesFixed: 0, minutesPerUnit: minutes / units.toNumber() };
  const design = version.mouldDesign;
  if (!design || settings.tankMinutesPerDay === 0) return [people];
  const perCavity = Number(settings.tankMinutesPerTray) / (design.rows * design.columns);
  // A chocolate with two tanks is poured from the first of them.
  const tanks = new Set(
    version.lines.flatMap(({ componentId }) => tanksOf.get(componentId)?.slice(0, 1) ?? []),
  );
  return [
    people,
    ...[...tanks].map((tank) => ({
      resource: tankResource(tank),
      minutesFixed: 0,
      minutesPerUnit: perCavity,
    })),
  ];
};

/**
 * A recipe as planning reads it: per gram of a filling that is good, per cavity filled, per box
 * packed. Lines come from costing's reading, so that plan and price take the same quantities.
 */
export const planRecipeOf = (
  version: StoredRecipe,
  facts: RecipeFacts,
  tanksOf: ReadonlyMap<string, readonly string[]>,
  settings: PlanningSettingsDto,
): PlanRecipe => {
  const counted = version.yieldPieces !== null;
  const units = counted ? new Decimal(version.yieldPieces ?? 1) : facts.goodYield;
  const design = version.mouldDesign;
  return {
    step: STEP_OF_KIND[version.recipe.item.kind] ?? 'cook',
    lines: facts.lines.map((line) => ({
      component: line.component,
      quantityPerUnit: line.quantity.dividedBy(units),
    })),
    goodRatio: counted ? facts.goodYield.dividedBy(units) : new Decimal(1),
    uses: usesOf(version, units, tanksOf, settings),
    restDays: restDaysOf(version),
    ...(design === null
      ? {}
      : {
          tray: {
            design: design.id,
            cavities: design.rows * design.columns,
            occupiedDays: settings.mouldDays,
          },
        }),
    ...(version.shelfLifeDays === null ? {} : { lifeDays: version.shelfLifeDays }),
  };
};
