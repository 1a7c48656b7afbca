import type { GanacheUse } from '../composition';
import type { ScalableLine, StepLoss } from '../scaling';
import type { DateKind, StatedLife } from '../shelf-life';
import type { Decimal } from '../units';

export const LINE_ROLES = [
  'base', 'infusion', 'shell', 'filling', 'cap', 'decoration', 'slot', 'packaging',
] as const; // prettier-ignore

export interface RecipeCheck {
  readonly measure: string;
  readonly low: Decimal | null;
  readonly high: Decimal | null;
}

export interface RecipeStep {
  readonly title: string;
  readonly text: string;
  readonly checks: readonly RecipeCheck[];
  readonly restHours: Decimal | null;
}

/** A recipe version as its pages show it. */
export interface RecipeContent {
  readonly lines: readonly ScalableLine[];
  readonly losses: readonly StepLoss[];
  readonly steps: readonly RecipeStep[];
  readonly yieldMassG: Decimal | null;
  readonly yieldPieces: number | null;
  readonly life: StatedLife;
  readonly dateKind: DateKind;
  readonly lifeAfterThawDays: number | null;
  readonly labourMinutes: Decimal | null;
  readonly mouldDesignId: string | null;
  readonly use: GanacheUse | null;
}
