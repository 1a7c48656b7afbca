import type { MakeUp } from '../composition';
import { percentOf } from '../composition';
import { Decimal } from '../units';
import type { RulingWaterActivity } from '../water-activity';
import { lifeBand, mouldFreeDays } from './bands';
import { named, say } from '../words/say';

export const LIFE_BASES = ['measured', 'validated', 'chosen', 'estimated'] as const;
export type LifeBasis = (typeof LIFE_BASES)[number];

/** The life that stands on a recipe version. */
export interface StatedLife {
  readonly days: number | null;
  readonly basis: LifeBasis | null;
  readonly document: string | null;
}

/** A component with a recipe of its own, and the life stated for it. */
export interface ComponentLife {
  readonly name: string;
  readonly days: number | null;
}

export interface LifeFacts {
  readonly stated: StatedLife;
  readonly waterActivity: RulingWaterActivity;
  readonly makeUp: MakeUp;
  /** Measured pH; null when unknown, which never helps. */
  readonly ph: Decimal | null;
  readonly components: readonly ComponentLife[];
  /** Pieces and boxes take their growth limit from what is inside them. */
  readonly isFilling: boolean;
}

export type LimitKind = 'stated' | 'growth' | 'nut_oil' | 'component' | 'mould_free_formula';

/** One limit of a life, whether or not it rules. */
export interface LifeLimit {
  readonly kind: LimitKind;
  /** Where to start; null when the limit gives no number. */
  readonly lowDays: number | null;
  /** Longest life that it allows; null when it caps nothing. */
  readonly capDays: number | null;
  readonly reason: string;
  readonly source: string;
}

const PRACTICE = say`common practice, no source`;
/** Nut fat from which oxidation and migrating oil are reckoned with, per cent. Our choice. */
const NUT_FAT_PERCENT = 5;

export const growthLimit = (aw: RulingWaterActivity): LifeLimit => {
  if (aw.worst === null) {
    return {
      kind: 'growth',
      lowDays: null,
      capDays: null,
      reason: say`Water activity is neither measured nor estimated: growth limits no number. Measure it.`,
      source: PRACTICE,
    };
  }
  const band = lifeBand(aw.worst);
  const high = band.highDays === null ? say`more` : say`${band.highDays} days`;
  return {
    kind: 'growth',
    lowDays: band.lowDays,
    capDays: band.highDays,
    reason: say`At the wet end of its ${named(aw.basis === 'measured' ? 'measurement' : 'estimate')} the water activity is ${aw.worst.toFixed(2)}: ${band.lowDays} to ${high}, ${band.storage}.`,
    source: PRACTICE,
  };
};

/** Shown as a guide; the bakery formula caps nothing in a sealed piece. */
export const formulaLimit = (worst: Decimal | null): LifeLimit[] => {
  const days = worst === null ? null : mouldFreeDays(worst);
  if (days === null) return [];
  return [
    {
      kind: 'mould_free_formula',
      lowDays: Math.floor(days),
      capDays: null,
      reason: say`Mould-free life of cake at 21 °C by formula: a lower guide for sealed pieces, no promise for badly closed ones.`,
      source: say`log₁₀ days = 7.91 − 0.081·ERH, bakery formula`,
    },
  ];
};

export const nutLimit = (makeUp: MakeUp): LifeLimit[] =>
  percentOf(makeUp.parts.nutFat, makeUp).lessThan(NUT_FAT_PERCENT)
    ? []
    : [
        {
          kind: 'nut_oil',
          lowDays: 60,
          capDays: 180,
          reason: say`Nut oil turns rancid and softens the shell: 2 to 6 months, dark and cool.`,
          source: PRACTICE,
        },
      ];

export const componentLimits = (components: readonly ComponentLife[]): LifeLimit[] =>
  components.map(({ name, days }) => ({
    kind: 'component',
    lowDays: days,
    capDays: days,
    reason:
      days === null
        ? say`${name} has no stated life: its lots will have no date to pass on.`
        : say`${name} keeps ${days} days from its own making; nothing made from it keeps longer.`,
    source: say`recipe of the component`,
  }));

export const isTested = (stated: StatedLife): boolean =>
  (stated.basis === 'measured' || stated.basis === 'validated') &&
  (stated.document ?? '').trim() !== '';

export const statedLimit = (stated: StatedLife): LifeLimit[] => {
  if (stated.days === null) return [];
  const basis = isTested(stated)
    ? say`${named(stated.basis ?? '')}, ${stated.document ?? ''}`
    : stated.basis === 'estimated'
      ? say`estimated: no test stands behind it`
      : say`a person’s choice`;
  return [
    {
      kind: 'stated',
      lowDays: stated.days,
      capDays: stated.days,
      reason: say`The recipe states ${stated.days} days (${basis}).`,
      source: isTested(stated) ? (stated.document ?? '') : say`this recipe version`,
    },
  ];
};
