import { Decimal } from '../units';

/**
 * The four cells of a cohort table. "With" is with the suspected cause; a case is a complaint.
 */
export interface TwoByTwo {
  readonly casesWith: number;
  readonly othersWith: number;
  readonly casesWithout: number;
  readonly othersWithout: number;
}

export interface RiskRatio {
  readonly ratio: number;
  readonly low95: number;
  readonly high95: number;
  readonly oddsRatio: number;
  /** True when half a unit was added to each cell because one was empty (Haldane and Anscombe). */
  readonly halfAdded: boolean;
}

/** 97.5th percentile of the standard normal distribution. */
const Z = 1.959963984540054;

/**
 * Relative risk with its 95 % log interval (Katz), and the odds ratio. Uses floating point (ln,
 * exp): relative error below 1e-12. Absent when all units, or none, are with the cause.
 */
export const riskRatio = (table: TwoByTwo): RiskRatio | undefined => {
  const { casesWith, othersWith, casesWithout, othersWithout } = table;
  if (casesWith + othersWith === 0 || casesWithout + othersWithout === 0) return undefined;
  const halfAdded = [casesWith, othersWith, casesWithout, othersWithout].includes(0);
  const half = halfAdded ? 0.5 : 0;
  const a = casesWith + half;
  const b = othersWith + half;
  const c = casesWithout + half;
  const d = othersWithout + half;
  const ratio = a / (a + b) / (c / (c + d));
  const error = Math.sqrt(1 / a - 1 / (a + b) + 1 / c - 1 / (c + d));
  return {
    ratio,
    low95: ratio * Math.exp(-Z * error),
    high95: ratio * Math.exp(Z * error),
    oddsRatio: (a * d) / (b * c),
    halfAdded,
  };
};

const choose = (n: number, k: number): bigint => {
  const few = Math.min(k, n - k);
  if (few < 0) return 0n;
  let product = 1n;
  for (let i = 1; i <= few; i += 1) product = (product * BigInt(n - few + i)) / BigInt(i);
  return product;
};

interface Hypergeometric {
  /** Weight of each possible number of cases with the cause, from `lowest` on. */
  readonly weights: readonly bigint[];
  readonly lowest: number;
  readonly total: bigint;
}

const hypergeometric = (table: TwoByTwo): Hypergeometric => {
  const withCause = table.casesWith + table.othersWith;
  const without = table.casesWithout + table.othersWithout;
  const cases = table.casesWith + table.casesWithout;
  const lowest = Math.max(0, cases - without);
  const weights: bigint[] = [];
  for (let k = lowest; k <= Math.min(withCause, cases); k += 1) {
    weights.push(choose(withCause, k) * choose(without, cases - k));
  }
  return { weights, lowest, total: choose(withCause + without, cases) };
};

const probability = (part: bigint, total: bigint): Decimal =>
  new Decimal(part.toString()).dividedBy(total.toString());

const add = (values: readonly bigint[]): bigint =>
  values.reduce((running, value) => running + value, 0n);

/** Fisher's exact test that the cause has more cases than chance gives: exact whole numbers. */
export const fisherOneSided = (table: TwoByTwo): Decimal => {
  const { weights, lowest, total } = hypergeometric(table);
  return probability(add(weights.slice(table.casesWith - lowest)), total);
};

/** Two-sided form: all tables that are no likelier than the one seen. */
export const fisherTwoSided = (table: TwoByTwo): Decimal => {
  const { weights, lowest, total } = hypergeometric(table);
  const seen = weights[table.casesWith - lowest] ?? 0n;
  return probability(add(weights.filter((weight) => weight <= seen)), total);
};

/** Holm's step-down adjustment, in the order given. */
export const holm = (pValues: readonly Decimal[]): Decimal[] => {
  const order = pValues
    .map((p, index) => ({ p, index }))
    .sort((a, b) => a.p.comparedTo(b.p) || a.index - b.index);
  const adjusted: Decimal[] = pValues.map(() => new Decimal(1));
  let running = new Decimal(0);
  order.forEach(({ p, index }, rank) => {
    running = Decimal.min(1, Decimal.max(running, p.times(order.length - rank)));
    adjusted[index] = running;
  });
  return adjusted;
};
