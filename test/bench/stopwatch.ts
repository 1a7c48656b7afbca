/** Middle of some numbers. */
export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
};

/** Milliseconds that some work took. */
export const clocked = async (work: () => Promise<unknown>): Promise<number> => {
  const before = performance.now();
  await work();
  return performance.now() - before;
};

/** One line of a report, past the test runner, which would frame it. */
export const report = (line: string): void => {
  process.stdout.write(`${line}\n`);
};
