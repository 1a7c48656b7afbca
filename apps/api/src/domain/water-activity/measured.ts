import { Temporal } from 'temporal-polyfill';
import type { Caution } from '../composition';
import { Decimal, roundTo, sum } from '../units';
import type { WaterActivity } from './estimate';
import { say } from '../words/say';

/** One reading of a filling's water activity, of one recipe version. */
export interface MeasuredWaterActivity {
  readonly value: Decimal;
  readonly measuredOn: Temporal.PlainDate;
  /** Uncertainty of the meter from its last calibration; null when it has none that passed. */
  readonly uncertainty: Decimal | null;
  readonly instrument: string;
}

/** The water activity that limits are read against. */
export type RulingWaterActivity =
  | {
      readonly basis: 'measured';
      readonly value: Decimal;
      readonly error: Decimal;
      readonly worst: Decimal;
      readonly measuredOn: Temporal.PlainDate;
      readonly cautions: readonly Caution[];
    }
  | { readonly basis: 'estimated'; readonly worst: Decimal; readonly cautions: readonly Caution[] }
  | { readonly basis: 'none'; readonly worst: null; readonly cautions: readonly Caution[] };

const NOT_CALIBRATED: Caution = {
  code: 'meter-not-calibrated',
  level: 'warning',
  text: say`There is a reading by a meter without a calibration that passed. It is shown but not used: read two saturated salts first.`,
};

/**
 * A calibrated measurement of this recipe version overrides the estimate; the wettest of the latest
 * day counts. Readings of other versions must not be passed in.
 */
export const rulingWaterActivity = (
  estimate: WaterActivity,
  readings: readonly MeasuredWaterActivity[],
): RulingWaterActivity => {
  const usable = readings.flatMap((row) =>
    row.uncertainty ? [{ ...row, worst: row.value.plus(row.uncertainty) }] : [],
  );
  const latest = usable.reduce<(typeof usable)[number] | null>((best, row) => {
    const order = best ? Temporal.PlainDate.compare(row.measuredOn, best.measuredOn) : 1;
    return !best || order > 0 || (order === 0 && row.worst.greaterThan(best.worst)) ? row : best;
  }, null);
  if (latest) {
    const { value, worst, measuredOn } = latest;
    const error = worst.minus(value);
    return {
      basis: 'measured',
      value,
      error,
      worst: Decimal.min(1, worst),
      measuredOn,
      cautions: [measuredCaution(value, error)],
    };
  }
  const cautions = [...estimate.cautions, ...(readings.length > 0 ? [NOT_CALIBRATED] : [])];
  return estimate.worst
    ? { basis: 'estimated', worst: estimate.worst, cautions }
    : { basis: 'none', worst: null, cautions };
};

const measuredCaution = (value: Decimal, error: Decimal): Caution => ({
  code: 'measured-once',
  level: 'note',
  text: say`Measured ${value.toFixed(3)} ± ${error.toFixed(3)} on this recipe version. It holds only while ingredients and weights stay the same. It is not a storage test: dates follow the local authority.`,
});

export interface ModelRecord {
  readonly pairs: number;
  /** Mean of estimate − measured; positive reads high, the safe side. */
  readonly bias: Decimal;
  readonly rootMeanSquare: Decimal;
  readonly largest: Decimal;
}

/** How the model has done in this workshop: its own table of estimate against measurement. */
export const modelRecord = (
  pairs: readonly { readonly estimate: Decimal; readonly measured: Decimal }[],
): ModelRecord | null => {
  if (pairs.length === 0) return null;
  const errors = pairs.map((pair) => pair.estimate.minus(pair.measured));
  const squares = errors.map((error) => error.times(error));
  return {
    pairs: pairs.length,
    bias: roundTo(sum(errors).dividedBy(errors.length), 4),
    rootMeanSquare: roundTo(sum(squares).dividedBy(errors.length).sqrt(), 4),
    largest: errors.reduce((most, error) => (error.abs().greaterThan(most.abs()) ? error : most)),
  };
};
