import { inEnglish, type Sentence } from '../../domain/words/say';
import type { FieldProblem } from './problem';

/** A failure of the request itself, before any rule of the trade is asked. */
export class ProblemError extends Error {
  constructor(
    readonly slug: string,
    readonly status: number,
    readonly title: Sentence,
    readonly detail: Sentence,
    readonly errors?: readonly FieldProblem[],
  ) {
    super(inEnglish(detail));
    this.name = 'ProblemError';
  }
}
