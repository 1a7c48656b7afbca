import { Decimal } from '../units';
import { percentOf } from './figures';
import type { MakeUp } from './make-up';
import { totalFatG, totalPolyolsG, totalSugarsG } from './totals';
import { say } from '../words/say';

/** How a ganache is used: poured into moulds, framed and cut, or piped and spread. */
export const GANACHE_USES = ['moulded', 'cut', 'piped'] as const;
export type GanacheUse = (typeof GANACHE_USES)[number];

export type BalanceQuantity =
  'water' | 'totalFat' | 'cocoaButter' | 'milkFat' | 'sweeteners' | 'fatFreeCocoa' | 'fatToWater';

export interface BalanceFinding {
  readonly quantity: BalanceQuantity;
  /** Per cent of the filling; for `fatToWater` grams of fat per gram of water. */
  readonly value: Decimal;
  readonly low: Decimal;
  readonly high: Decimal;
  readonly verdict: 'in' | 'low' | 'high';
  /** Why it matters, and what usually helps. Advice, never a block. */
  readonly reason: string;
}

type Range = readonly [low: string, high: string];

/** Common practice, no source: three schools' and two handbooks' anchors, rounded. */
const RANGES: Readonly<Record<BalanceQuantity, Readonly<Record<GanacheUse, Range>>>> = {
  water: { moulded: ['17', '22'], cut: ['15', '20'], piped: ['20', '27'] },
  totalFat: { moulded: ['28', '38'], cut: ['30', '40'], piped: ['25', '38'] },
  cocoaButter: { moulded: ['14', '20'], cut: ['20', '25'], piped: ['12', '20'] },
  milkFat: { moulded: ['8', '18'], cut: ['8', '16'], piped: ['10', '18'] },
  sweeteners: { moulded: ['25', '35'], cut: ['25', '35'], piped: ['20', '35'] },
  fatFreeCocoa: { moulded: ['3', '12'], cut: ['5', '12'], piped: ['3', '12'] },
  fatToWater: { moulded: ['1.3', '2.2'], cut: ['1.6', '2.4'], piped: ['1.0', '1.8'] },
};

/** Milk and white chocolate bring more sugar: up to 45 % is usual in a moulded ganache. */
const SWEETENERS_WITH_MILK_CHOCOLATE = '45';

const REASONS: Readonly<Record<BalanceQuantity, Readonly<Record<'low' | 'high', string>>>> = {
  water: {
    low: say`Little water: the ganache may be short and split. More cream or less chocolate helps.`,
    high: say`Much water: a soft set and a short life. Less cream, or part of it as syrup, helps.`,
  },
  totalFat: {
    low: say`Little fat: it may set rubbery and taste thin. More butter or chocolate helps.`,
    high: say`Much fat: it splits easily. More water phase, or less butter, helps.`,
  },
  cocoaButter: {
    low: say`Little cocoa butter: it sets soft. More chocolate helps.`,
    high: say`Much cocoa butter: it sets hard and may crack. Butter in place of chocolate helps.`,
  },
  milkFat: {
    low: say`Little milk fat: the melt is hard. Some butter helps.`,
    high: say`Much milk fat: it stays soft and melts early. Less butter helps.`,
  },
  sweeteners: {
    low: say`Little sugar: water stays free and life is short. Syrup, invert sugar or sorbitol helps.`,
    high: say`Much sugar: sweet, and it may grain. Less sugar, or a darker chocolate, helps.`,
  },
  fatFreeCocoa: {
    low: say`Little dry cocoa: a soft body. A darker chocolate helps.`,
    high: say`Much dry cocoa: it thickens and may split. More cream or a lighter chocolate helps.`,
  },
  fatToWater: {
    low: say`Little fat for the water: a loose emulsion that keeps badly.`,
    high: say`Much fat for the water: the emulsion is near splitting. Warm liquid in small steps helps.`,
  },
};

const IN_RANGE = say`Within what is common practice.`;

export const BALANCE_SOURCE = say`common practice, no source`;

const valuesOf = (makeUp: MakeUp): Record<BalanceQuantity, Decimal> => {
  const { water, cocoaButter, milkFat } = makeUp.parts;
  const fat = totalFatG(makeUp);
  return {
    water: percentOf(water, makeUp),
    totalFat: percentOf(fat, makeUp),
    cocoaButter: percentOf(cocoaButter, makeUp),
    milkFat: percentOf(milkFat, makeUp),
    sweeteners: percentOf(totalSugarsG(makeUp).plus(totalPolyolsG(makeUp)), makeUp),
    fatFreeCocoa: percentOf(makeUp.fatFreeCocoa, makeUp),
    fatToWater: water.isZero() ? new Decimal(0) : fat.dividedBy(water),
  };
};

/** Every balance quantity of a ganache against its usual range, with the reason when it is out. */
export const ganacheBalance = (makeUp: MakeUp, use: GanacheUse): BalanceFinding[] => {
  const values = valuesOf(makeUp);
  const milky = isMilky(makeUp);
  return (Object.keys(RANGES) as BalanceQuantity[]).map((quantity) => {
    const [lowText, highText] = RANGES[quantity][use];
    const wide = quantity === 'sweeteners' && use === 'moulded' && milky;
    const low = new Decimal(lowText);
    const high = new Decimal(wide ? SWEETENERS_WITH_MILK_CHOCOLATE : highText);
    const value = values[quantity];
    const verdict = value.lessThan(low) ? 'low' : value.greaterThan(high) ? 'high' : 'in';
    const reason = verdict === 'in' ? IN_RANGE : REASONS[quantity][verdict];
    return { quantity, value, low, high, verdict, reason };
  });
};

/** More cocoa butter than three times the dry cocoa: milk or white chocolate, not dark. */
const isMilky = (makeUp: MakeUp): boolean =>
  makeUp.parts.cocoaButter.greaterThan(makeUp.fatFreeCocoa.times(3));
