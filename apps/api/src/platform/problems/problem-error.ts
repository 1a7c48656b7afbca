import type { FieldProblem } from './problem';

/** A failure of the request itself, before any rule of the trade is asked. */
export class ProblemError extends Error {
  constructor(
    readonly slug: string,
    readonly status: number,
    readonly title: string,
    readonly detail: string,
    readonly errors?: readonly FieldProblem[],
  ) {
    super(detail);
    this.name = 'ProblemError';
  }
}
