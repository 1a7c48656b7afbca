export interface PackWeights {
  readonly weights: readonly string[];
  /** What could not be read as a weight. */
  readonly unread: readonly string[];
}

/** Weights as they are typed or pasted: one a line, or with semicolons or spaces between. */
export const readWeights = (
  text: string,
  parse: (one: string) => string | undefined,
): PackWeights => {
  const weights: string[] = [];
  const unread: string[] = [];
  for (const one of text.split(/[\s;]+/).filter((part) => part !== '')) {
    const weight = parse(one);
    if (weight === undefined || Number(weight) <= 0) unread.push(one);
    else weights.push(weight);
  }
  return { weights, unread };
};
