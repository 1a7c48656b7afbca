import { Decimal, roundTo } from '../units';

/**
 * How a figure is printed, by the Commission's guidance on tolerances of December 2012: `amount` at
 * or below the negligible limit is "0".
 */
interface RoundingRule {
  readonly negligible: string;
  /** From here on `coarse` decimal places, `fine` below. */
  readonly from: number;
  readonly coarse: number;
  readonly fine: number;
}

const MACRO: RoundingRule = { negligible: '0.5', from: 10, coarse: 0, fine: 1 };
const FATTY_ACID: RoundingRule = { negligible: '0.1', from: 10, coarse: 0, fine: 1 };
const SALT: RoundingRule = { negligible: '0.0125', from: 1, coarse: 1, fine: 2 };

export type EuRow =
  'fat' | 'saturates' | 'carbohydrate' | 'sugars' | 'polyols' | 'fibre' | 'protein' | 'salt';

const RULES: Readonly<Record<EuRow, RoundingRule>> = {
  fat: MACRO,
  saturates: FATTY_ACID,
  carbohydrate: MACRO,
  sugars: MACRO,
  polyols: MACRO,
  fibre: MACRO,
  protein: MACRO,
  salt: SALT,
};

/** The figure to print, without its unit. What rounds up to ten is printed as "10". */
export const euAmount = (row: EuRow, grams: Decimal): string => {
  const rule = RULES[row];
  if (grams.lessThanOrEqualTo(rule.negligible)) return '0';
  if (grams.greaterThanOrEqualTo(rule.from))
    return roundTo(grams, rule.coarse).toFixed(rule.coarse);
  const fine = roundTo(grams, rule.fine);
  if (fine.greaterThanOrEqualTo(rule.from)) return fine.toFixed(rule.coarse);
  return fine.toString();
};

/** Nearest whole kJ or kcal. */
export const euEnergy = (energy: Decimal): string => roundTo(energy, 0).toString();

/** Reference intakes of Annex XIII Part B (energy read, the rest from memory). */
export const REFERENCE_INTAKES: Readonly<Record<'energyKJ' | EuRow, Decimal | null>> = {
  energyKJ: new Decimal(8400),
  fat: new Decimal(70),
  saturates: new Decimal(20),
  carbohydrate: new Decimal(260),
  sugars: new Decimal(90),
  polyols: null,
  fibre: null,
  protein: new Decimal(50),
  salt: new Decimal(6),
};

/** Whole per cent of the reference intake, from the unrounded amount. */
export const percentOfIntake = (row: 'energyKJ' | EuRow, amount: Decimal): string | null => {
  const intake = REFERENCE_INTAKES[row];
  return intake ? roundTo(amount.times(100).dividedBy(intake), 0).toString() : null;
};

/** Tolerance band of a declared figure, same guidance (from memory): which measured values pass. */
export const withinTolerance = (row: EuRow, declared: Decimal, measured: Decimal): boolean => {
  const gap = measured.minus(declared).abs();
  return gap.lessThanOrEqualTo(toleranceOf(row, declared));
};

const toleranceOf = (row: EuRow, declared: Decimal): Decimal => {
  const fifth = declared.times(20).dividedBy(100);
  if (row === 'saturates') return declared.lessThan(4) ? new Decimal('0.8') : fifth;
  if (row === 'salt') return declared.lessThan('1.25') ? new Decimal('0.375') : fifth;
  if (declared.greaterThan(40)) return new Decimal(8);
  if (declared.greaterThanOrEqualTo(10)) return fifth;
  return new Decimal(row === 'fat' ? '1.5' : 2);
};
