import type { Decimal } from '../units';
import type { TemperedProduct, TemperingCurve, TemperingStep, TempWindow } from './curves';
import { say } from '../words/say';

export type TempVerdict = 'in' | 'low' | 'high';

export interface TemperingVerdict {
  readonly verdict: TempVerdict;
  readonly lowC: Decimal;
  readonly highC: Decimal;
  /** What to do next, in words for the bench. */
  readonly advice: string;
  readonly source: string;
}

const ADVICE: Readonly<Record<TemperingStep, Readonly<Record<TempVerdict, string>>>> = {
  melt: {
    in: say`Melted. Hold until no lump is left, then cool while stirring.`,
    low: say`Not warm enough: old crystals stay. Warm on and measure again.`,
    high: say`Too hot: milk solids can lump and scorch. Take it off the heat and smell it before use.`,
  },
  cool: {
    in: say`Cool enough to seed. Warm gently to the working window.`,
    low: say`Too cold: it thickens and unwanted crystals form. Melt it fully and start again.`,
    high: say`Still too warm to form seeds. Cool on while stirring, or add seed.`,
  },
  work: {
    in: say`In the working window. Make a test strip: it sets with a shine within five minutes.`,
    low: say`Below the working window: it thickens and traps air. Warm a little, stir, measure again.`,
    high: say`Above the working window: the temper may be lost. Cool, test a strip on paper, and temper again if it doesn’t set with a shine.`,
  },
};

const windowOf = (curve: TemperingCurve, step: TemperingStep): TempWindow =>
  step === 'cool' ? (curve.cool ?? curve.work) : curve[step];

/** Judges one reading against the curve in force: the maker's, or the table's when none is stated. */
export const judgeTempering = (
  curve: TemperingCurve,
  step: TemperingStep,
  tempC: Decimal,
): TemperingVerdict => {
  const { lowC, highC } = windowOf(curve, step);
  const verdict = tempC.lessThan(lowC) ? 'low' : tempC.greaterThan(highC) ? 'high' : 'in';
  return { verdict, lowC, highC, advice: ADVICE[step][verdict], source: curve.source };
};

/** Windows of a step as limits for a reading of measure `temp_c`. */
export const temperingLimits = (curve: TemperingCurve, step: TemperingStep): TempWindow =>
  windowOf(curve, step);

export const isTemperedProduct = (text: string): text is TemperedProduct =>
  ['dark', 'milk', 'white', 'coloured_cocoa_butter'].includes(text);
