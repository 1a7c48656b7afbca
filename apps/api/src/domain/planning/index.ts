export { lackingOf, type BatchToFill } from './lacking';
export { Effort } from './effort';
export { plan, planInSteps, type PlanEffort } from './plan';
export type {
  BegunBatch,
  Capacity,
  Demand,
  PlanItem,
  PlanLine,
  PlanLot,
  PlanProblem,
  PlanRecipe,
  ResourceUse,
  WorkCalendar,
} from './problem';
export type { Plan, PlannedBatch, PlannedUse, Purchase, Shortfall, Source } from './planned';
export type { PlanningRefusal } from './refusals';
export { shoppingList, type ShoppingLine, type SupplierOrder, type SupplyTerms } from './shopping';
export type { WayOut, WayPrices } from './way-tries';
export { waysOut } from './ways-out';
