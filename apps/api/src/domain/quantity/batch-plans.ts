interface DoublePlan {
  /** Largest batch of the plan. */
  readonly upTo: number;
  readonly sample: number;
  readonly accept: number;
  readonly reject: number;
  /** Defective packs allowed in both samples together. */
  readonly acceptBoth: number;
  /** Packs that the test of the mean looks at, and the factor of their deviation in it. */
  readonly meanSample: number;
  readonly k: string;
}

/** Directive 76/211/EEC, Annex II; the tables stand in full in the French order of 20 October 1978. */
export const DOUBLE_PLANS: readonly DoublePlan[] = [
  { upTo: 500, sample: 30, accept: 1, reject: 3, acceptBoth: 4, meanSample: 30, k: '0.503' },
  { upTo: 3200, sample: 50, accept: 2, reject: 5, acceptBoth: 6, meanSample: 50, k: '0.379' },
  { upTo: 10_000, sample: 80, accept: 3, reject: 7, acceptBoth: 8, meanSample: 50, k: '0.379' },
];

export const DESTRUCTIVE = { sample: 20, accept: 1, k: '0.640' };

/** Below this many packs every one is weighed. */
export const ALL_WEIGHED_UNDER = 100;
