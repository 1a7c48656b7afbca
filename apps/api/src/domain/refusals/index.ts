import type { PrintingRefusal } from '../printing/refusals';
import type { LabelRefusal } from '../label/refusals';
import type { SplitRefusal } from '../split/split-proposal';
import type { ShelfLifeRefusal } from '../shelf-life/refusals';
import type { RecipeRefusal } from '../recipe/refusals';
import type { MouldingRefusal } from '../moulding/refusals';
import type { CompositionRefusal } from '../composition/refusals';
import type { CostingRefusal } from '../costing/refusals';
import type { DispatchRefusal } from '../dispatch/refusals';
import type { MakingRefusal } from '../making/refusals';
import type { PlanningRefusal } from '../planning/refusals';
import type { PricingRefusal } from '../pricing/refusals';
import type { ProvenanceRefusal } from '../provenance/refusals';
import type { ScalingRefusal } from '../scaling/refusals';
import type { ReceivingRefusal } from '../receiving/refusals';
import type { IdentificationRefusal } from '../identification/refusals';
import type { StockRefusal } from '../stock/refusals';
import type { ServiceRefusal } from './service-refusals';

export { ok, refuse, type Refused, type Result } from './result';
export type { ServiceRefusal } from './service-refusals';

/** Every refusal that the service can give. Each area adds its closed union here. */
export type Refusal =
  | ServiceRefusal
  | ReceivingRefusal
  | IdentificationRefusal
  | StockRefusal
  | DispatchRefusal
  | MakingRefusal
  | ProvenanceRefusal
  | ScalingRefusal
  | CostingRefusal
  | PricingRefusal
  | PlanningRefusal
  | CompositionRefusal
  | MouldingRefusal
  | RecipeRefusal
  | ShelfLifeRefusal
  | SplitRefusal
  | PrintingRefusal
  | LabelRefusal;
export type RefusalCode = Refusal['code'];
