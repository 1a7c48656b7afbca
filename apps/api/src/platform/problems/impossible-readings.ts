import { impossibleReading } from '../../domain/making';
import { Decimal } from '../../domain/units';
import { say } from '../../domain/words/say';
import { ProblemError } from './problem-error';

export interface ReadingToCheck {
  /** JSON pointer of the field that holds the number. */
  readonly pointer: string;
  readonly measure: string;
  readonly value: string;
}

/** @throws ProblemError that says at each field why its number can't be a reading, and what can */
export const refuseImpossible = (readings: readonly ReadingToCheck[]): void => {
  const errors = readings.flatMap(({ pointer, measure, value }) => {
    const message = impossibleReading(measure, new Decimal(value));
    return message === null ? [] : [{ pointer, message }];
  });
  const [first] = errors;
  if (first === undefined) return;
  throw new ProblemError(
    'reading-not-possible',
    422,
    say`Not a possible reading`,
    first.message,
    errors,
  );
};
