import { Decimal } from '../units';

/** A check point of a recipe step: the limits that a reading there must keep. */
export interface StepCheck {
  /** Title of the step. */
  readonly step: string;
  readonly measure: string;
  readonly low: Decimal | null;
  readonly high: Decimal | null;
}

export type Verdict = 'in' | 'low' | 'high' | 'no_limit';

const textOf = (value: unknown, name: string): string | null => {
  if (typeof value !== 'object' || value === null) return null;
  const found: unknown = Reflect.get(value, name);
  return typeof found === 'string' || typeof found === 'number' ? String(found) : null;
};

const listOf = (value: unknown, name: string): unknown[] => {
  if (typeof value !== 'object' || value === null) return [];
  const found: unknown = Reflect.get(value, name);
  return Array.isArray(found) ? found : [];
};

const limit = (value: unknown, name: string): Decimal | null => {
  const text = textOf(value, name);
  return text === null || !/^-?\d+(\.\d+)?$/.test(text) ? null : new Decimal(text);
};

/** The check points of a recipe version's steps, as they are stored with it. */
export const stepChecks = (steps: unknown): StepCheck[] =>
  (Array.isArray(steps) ? steps : []).flatMap((step) => {
    const title = textOf(step, 'title') ?? '';
    return listOf(step, 'checks').flatMap((check) => {
      const measure = textOf(check, 'measure');
      if (measure === null) return [];
      return [{ step: title, measure, low: limit(check, 'low'), high: limit(check, 'high') }];
    });
  });

/** The check point that a reading is of; without one it has no limits. */
export const checkPointOf = (
  checks: readonly StepCheck[],
  reading: { readonly measure: string; readonly step?: string | undefined },
): Pick<StepCheck, 'low' | 'high'> & { readonly step: string | null } =>
  checks.find(
    ({ step, measure }) => measure === reading.measure && (reading.step ?? step) === step,
  ) ?? { step: reading.step ?? null, low: null, high: null };

export const judge = (
  value: Decimal,
  limits: { readonly low: Decimal | null; readonly high: Decimal | null },
): Verdict => {
  if (limits.low !== null && value.lessThan(limits.low)) return 'low';
  if (limits.high !== null && value.greaterThan(limits.high)) return 'high';
  return limits.low === null && limits.high === null ? 'no_limit' : 'in';
};

export interface TakenReading {
  readonly id: string;
  readonly step: string | null;
  readonly measure: string;
  readonly verdict: Verdict;
  /** It was marked as wrong: it proves nothing, and a value outside its limits still asks why. */
  readonly withdrawn: boolean;
}

const sameCheck = (a: TakenReading, b: TakenReading): boolean =>
  a.measure === b.measure && (a.step ?? '') === (b.step ?? '');

/**
 * Readings outside their limits that nobody put right: a later reading of the same check that stands
 * takes their place. Marking one as wrong is not enough: the check has to be read again, else whoever
 * dislikes a value could make it vanish. Readings come in the order in which they were taken.
 */
export const standingDeviations = <R extends TakenReading>(readings: readonly R[]): R[] =>
  readings.filter(
    (reading, index) =>
      (reading.verdict === 'low' || reading.verdict === 'high') &&
      !readings.slice(index + 1).some((later) => !later.withdrawn && sameCheck(reading, later)),
  );

/** Check points at which no reading was taken yet that stands. */
export const checksDue = (
  checks: readonly StepCheck[],
  readings: readonly TakenReading[],
): StepCheck[] =>
  checks.filter(
    (check) =>
      !readings.some(
        ({ step, measure, withdrawn }) =>
          !withdrawn && step === check.step && measure === check.measure,
      ),
  );
