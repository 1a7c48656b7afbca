/** How far a long reckoning is. */
export interface Step {
  readonly done: number;
  readonly total: number;
}

/**
 * A reckoning that pauses between its steps, so that whoever runs it can show how far it is, let
 * others have their turn, or stop. A step says nothing where nobody knows how many there will be.
 */
export type InSteps<T> = Generator<Step | undefined, T>;

/** Runs to the end without a pause. */
export const atOnce = <T>(steps: InSteps<T>): T => {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
};
