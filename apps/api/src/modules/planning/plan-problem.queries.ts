import type { Capacity, PlanItem, PlanProblem, PlanRecipe } from '../../domain/planning';
import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { loadBasis, type LoadedBasis } from '../pricing';
import { loadStock } from '../stock-value';
import { loadBegun } from './begun.queries';
import { loadDemands, type NamedDemand } from './demands.queries';
import { PEOPLE, planRecipeOf, tankResource } from './planned-recipe';
import { calendarOf, planningSettings } from './planning-settings';
import type { PlanningSettingsView } from './planning-settings.dto';

/** Days that a delivery is taken to need when nobody said. */
export const USUAL_LEAD_DAYS = 2;

export interface LoadedProblem {
  readonly problem: PlanProblem;
  readonly basis: LoadedBasis;
  readonly settings: PlanningSettingsView;
  readonly demands: readonly NamedDemand[];
  readonly lotCodes: ReadonlyMap<string, string>;
  readonly batchCodes: ReadonlyMap<string, string>;
  readonly designNames: ReadonlyMap<string, string>;
  readonly tankNames: ReadonlyMap<string, string>;
}

const itemsOf = (
  items: ReadonlyMap<string, Item>,
  recipes: ReadonlyMap<string, PlanRecipe>,
  leadDays: ReadonlyMap<string, number>,
): Map<string, PlanItem> =>
  new Map(
    [...items.values()].map((item): [string, PlanItem] => {
      const recipe = recipes.get(item.id);
      const lead = leadDays.get(item.id) ?? USUAL_LEAD_DAYS;
      const head = { id: item.id, capsDate: item.capsDate, leadDays: lead };
      return [item.id, recipe ? { ...head, recipe } : head];
    }),
  );

const capacitiesOf = (settings: PlanningSettingsView, tanks: readonly string[]): Capacity[] => [
  {
    resource: PEOPLE,
    minutesPerDay: settings.peopleMinutesPerDay,
    exceptions: new Map(settings.dayMinutes.map(({ day, minutes }) => [day, minutes])),
  },
  ...tanks.map((tank) => ({
    resource: tankResource(tank),
    minutesPerDay: settings.tankMinutesPerDay,
  })),
];

/** Everything that a plan depends on, as it stands at an instant. */
export const loadProblem = async (tx: Tx, today: string, at: Date): Promise<LoadedProblem> => {
  const basis = await loadBasis(tx, today);
  const settings = planningSettings(basis.workshop);
  const tanks = await tx.tank.findMany({ where: { active: true }, orderBy: { name: 'asc' } });
  const tanksOf = new Map(
    tanks.map(({ itemId }) => [itemId, tanks.filter((t) => t.itemId === itemId).map((t) => t.id)]),
  );
  const recipes = new Map<string, PlanRecipe>();
  for (const [id, version] of basis.recipes) {
    const facts = basis.costs.recipes.get(id);
    if (facts) recipes.set(id, planRecipeOf(version, facts, tanksOf, settings));
  }
  const terms = await tx.supplyTerm.findMany();
  const leadDays = new Map(terms.map((term) => [term.itemId, term.leadDays]));
  const stock = await loadStock(tx, at, null);
  const { begun, lacking } = await loadBegun(tx, recipes, today, at);
  const demands = [...lacking, ...(await loadDemands(tx, basis, settings))];
  const designs = await tx.mouldDesign.findMany({
    include: { moulds: { where: { state: 'sound' }, select: { id: true } } },
  });
  const batches = await tx.batch.findMany({
    where: { id: { in: begun.map(({ batch }) => batch) } },
    select: { id: true, code: true },
  });
  return {
    basis,
    settings,
    demands,
    lotCodes: new Map(stock.map(({ lot, code }) => [lot, code])),
    batchCodes: new Map(batches.map(({ id, code }) => [id, code])),
    designNames: new Map(designs.map(({ id, name }) => [id, name])),
    tankNames: new Map(tanks.map(({ id, name }) => [tankResource(id), name])),
    problem: {
      today,
      horizonDays: settings.horizonDays,
      calendar: calendarOf(settings),
      items: itemsOf(basis.items, recipes, leadDays),
      lots: stock.map(({ lot, item, quantity, reserved, lastDay, held }) => ({
        lot,
        item,
        quantity: quantity.minus(reserved),
        held,
        ...(lastDay === undefined ? {} : { lastDay }),
      })),
      demands,
      capacities: capacitiesOf(
        settings,
        tanks.map(({ id }) => id),
      ),
      moulds: new Map(designs.map(({ id, moulds }) => [id, moulds.length])),
      begun,
    },
  };
};
