import { Temporal } from 'temporal-polyfill';
import { say, type Sentence } from '../words/say';

export type DateKind = 'best_before' | 'use_by';

/** A lot that went into the one that is dated. */
export interface DatedDraw {
  readonly lotCode: string;
  readonly itemName: string;
  /** The item's own date may not be outlived by what is made from it. */
  readonly capsDate: boolean;
  readonly bestBefore: Temporal.PlainDate | null;
  readonly useBy: Temporal.PlainDate | null;
}

export interface LotDateFacts {
  readonly madeOn: Temporal.PlainDate;
  readonly dateKind: DateKind;
  /** Life of the recipe version; null when it states none, or for a tank's charge. */
  readonly shelfLifeDays: number | null;
  /** How the life is called in the explanation, as `Dark ganache v3, validated`. */
  readonly lifeName: string;
  readonly draws: readonly DatedDraw[];
}

export type DateReasonKind =
  | 'recipe_life'
  | 'no_recipe_life'
  | 'drawn_lot'
  | 'drawn_lot_without_date'
  | 'does_not_cap'
  | 'frozen'
  | 'thawed';

/** One line of the explanation; stored with the lot as it stands. */
export interface DateReason {
  readonly kind: DateReasonKind;
  /** YYYY-MM-DD; null for a line that sets no day. */
  readonly day: string | null;
  readonly lotCode: string | null;
  readonly rules: boolean;
  readonly text: string;
}

export interface LotDate {
  readonly kind: DateKind;
  /** Null when nothing sets a date: such a lot can't be labelled. */
  readonly day: Temporal.PlainDate | null;
  readonly reasons: readonly DateReason[];
}

type Line = Omit<DateReason, 'rules'>;

/** The earlier of a lot's two dates. */
export const ownDate = (
  draw: Pick<DatedDraw, 'bestBefore' | 'useBy'>,
): { day: Temporal.PlainDate; kind: DateKind } | null => {
  const { bestBefore, useBy } = draw;
  if (useBy && (!bestBefore || Temporal.PlainDate.compare(useBy, bestBefore) <= 0)) {
    return { day: useBy, kind: 'use_by' };
  }
  return bestBefore ? { day: bestBefore, kind: 'best_before' } : null;
};

/**
 * Date of a made lot: the earliest of the day it was made plus the life of its recipe version, and
 * the own date of every drawn lot whose item caps. Every line is kept, the one that rules is marked
 * (the first of several on one day).
 */
export const lotDate = (facts: LotDateFacts): LotDate => {
  const lines: Line[] = [lifeLine(facts), ...distinct(facts.draws).map(drawLine)];
  const ruling = lines
    .filter((line) => line.day !== null && line.kind !== 'does_not_cap')
    .reduce<Line | null>((first, line) => (!first || isBefore(line, first) ? line : first), null);
  return {
    kind: facts.dateKind,
    day: ruling?.day ? Temporal.PlainDate.from(ruling.day) : null,
    reasons: lines.map((line) => ({ ...line, rules: line === ruling })),
  };
};

/** ISO days sort as text. */
const isBefore = (a: Line, b: Line): boolean => (a.day ?? '') < (b.day ?? '');

const distinct = (draws: readonly DatedDraw[]): DatedDraw[] => [
  ...new Map(draws.map((draw) => [draw.lotCode, draw])).values(),
];

const lifeLine = (facts: LotDateFacts): Line => {
  const { madeOn, shelfLifeDays, lifeName } = facts;
  if (shelfLifeDays === null) {
    const text = say`${lifeName}: no life is stated; only the lots inside set a date.`;
    return { kind: 'no_recipe_life', day: null, lotCode: null, text };
  }
  return {
    kind: 'recipe_life',
    day: madeOn.add({ days: shelfLifeDays }).toString(),
    lotCode: null,
    text: say`Made on ${madeOn.toString()}, keeps ${shelfLifeDays} days (${lifeName}).`,
  };
};

const WORDS: Readonly<Record<DateKind, Sentence>> = {
  best_before: say`best before`,
  use_by: say`use by`,
};

const drawLine = (draw: DatedDraw): Line => {
  const { lotCode, itemName } = draw;
  const own = ownDate(draw);
  if (!own) {
    const text = say`Lot ${lotCode} (${itemName}) has no date of its own.`;
    return { kind: 'drawn_lot_without_date', day: null, lotCode, text };
  }
  const day = own.day.toString();
  const what = say`Lot ${lotCode} (${itemName}) is ${WORDS[own.kind]} ${day}`;
  return draw.capsDate
    ? { kind: 'drawn_lot', day, lotCode, text: say`${what}; nothing made from it is dated later.` }
    : { kind: 'does_not_cap', day, lotCode, text: say`${what}, but this item caps no date.` };
};
