import { Decimal } from '../units';
import { say, type Sentence } from '../words/say';

interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly says: (value: Decimal) => Sentence;
}

const PERCENT = { low: 0, high: 100 } as const;

/**
 * What a number of this measure can be at all, whatever the limits of a step: the scales themselves
 * end there. Temperatures are bounded by what a kitchen's probe can show (common practice, no
 * source), so that a slipped point is found while the pot is still there.
 */
const BOUNDS: Readonly<Record<string, Bounds>> = {
  water_activity: {
    low: 0,
    high: 1,
    says: (value) =>
      value.greaterThan(1) && value.lessThanOrEqualTo(100)
        ? say`Water activity is a fraction from 0 to 1: a meter that shows ${value.toFixed()} % read ${value.dividedBy(100).toFixed()}. Write that.`
        : say`Water activity is a fraction from 0 to 1. Look at the meter again.`,
  },
  ph: { low: 0, high: 14, says: () => say`pH goes from 0 to 14. Look at the meter again.` },
  humidity_percent: {
    ...PERCENT,
    says: () => say`Humidity goes from 0 to 100 per cent. Look at the meter again.`,
  },
  brix: {
    ...PERCENT,
    says: () => say`Degrees Brix go from 0 to 100. Look at the refractometer again.`,
  },
  temp_c: {
    low: -100,
    high: 400,
    says: () => say`No probe in a kitchen shows that: give the temperature in °C.`,
  },
};

/** Why a number can't be a reading of this measure; null when it can. */
export const impossibleReading = (measure: string, value: Decimal): Sentence | null => {
  const bounds = BOUNDS[measure];
  if (bounds === undefined) return null;
  const inside = value.greaterThanOrEqualTo(bounds.low) && value.lessThanOrEqualTo(bounds.high);
  return inside ? null : bounds.says(value);
};
