import { ok, refuse, type Result } from '../refusals/result';
import type { ServiceRefusal } from '../refusals/service-refusals';
import { Decimal } from '../units';
import { say } from '../words/say';

/** Salts whose saturated solutions hold a known humidity. Sodium and potassium bracket ganache. */
export const REFERENCE_SALTS = ['NaCl', 'KCl', 'MgCl2', 'LiCl'] as const;
export type ReferenceSalt = (typeof REFERENCE_SALTS)[number];

/**
 * Greenspan 1977 (J Res NBS 81A:89), RH % = Σ ai·tⁱ. The linear term of LiCl is positive: copies
 * with a minus give 10.89 at 25 °C against the printed 11.30.
 */
const COEFFICIENTS: Readonly<Record<ReferenceSalt, readonly string[]>> = {
  NaCl: ['75.5164', '0.0398321', '-0.00265459', '2.848e-5'],
  MgCl2: ['33.6686', '-0.00797397', '-0.00108988'],
  KCl: ['88.6190', '-0.193340', '8.99706e-4'],
  LiCl: ['11.2323', '0.00824245', '-2.1489e-4'],
};

/** Water activity over a saturated salt; the fit holds from 5 to 50 °C. */
export const saltWaterActivity = (salt: ReferenceSalt, tempC: Decimal): Decimal =>
  COEFFICIENTS[salt]
    .reduce((sum, a, power) => sum.plus(new Decimal(a).times(tempC.pow(power))), new Decimal(0))
    .dividedBy(100);

/** Outside of this the humidity over a salt isn't known, so nothing can be judged by it. */
export const checkSaltTemperatures = (
  tempsC: readonly Decimal[],
): Result<readonly Decimal[], ServiceRefusal> => {
  const outside = tempsC.find((tempC) => tempC.lessThan(5) || tempC.greaterThan(50));
  if (outside === undefined) return ok(tempsC);
  return refuse({
    code: 'not-valid',
    detail: say`The humidity over saturated salts is known from 5 to 50 °C, not at ${outside.toFixed()} °C. Let the meter and the salts come to the temperature of the room, then read again.`,
    facts: { tempC: outside.toFixed() },
  });
};

export interface SaltCheck {
  readonly salt: ReferenceSalt;
  readonly tempC: Decimal;
  readonly read: Decimal;
}

export interface CalibrationVerdict {
  readonly passed: boolean;
  /** What a reading by this meter is worth: largest deviation, 0.003 at the least. */
  readonly uncertainty: Decimal;
  readonly deviations: readonly {
    readonly salt: ReferenceSalt;
    readonly expected: Decimal;
    readonly deviation: Decimal;
  }[];
  readonly advice: string;
}

/** A bench meter reads within 0.003 at best; above 0.010 it is adjusted or sent away. */
const BEST_UNCERTAINTY = new Decimal('0.003');
const MOST_DEVIATION = new Decimal('0.010');

/** Judges a meter's readings of saturated salts. One salt is not enough: two bracket the range. */
export const judgeCalibration = (checks: readonly SaltCheck[]): CalibrationVerdict => {
  const deviations = checks.map((check) => {
    const expected = saltWaterActivity(check.salt, check.tempC);
    return { salt: check.salt, expected, deviation: check.read.minus(expected) };
  });
  const largest = Decimal.max(0, ...deviations.map((row) => row.deviation.abs()));
  const bracketed = new Set(checks.map((check) => check.salt)).size >= 2;
  const near = largest.lessThanOrEqualTo(MOST_DEVIATION);
  return {
    passed: bracketed && near,
    uncertainty: Decimal.max(BEST_UNCERTAINTY, largest),
    deviations,
    advice: !bracketed
      ? say`Read two salts, one on each side of the values you measure (NaCl and KCl for ganache).`
      : near
        ? say`The meter may be used.`
        : say`Off by more than 0.010: clean, let it warm up, read again; then have it adjusted.`,
  };
};
