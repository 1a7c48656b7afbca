import { Decimal, sum } from '../units';
import { ALL_WEIGHED_UNDER, DESTRUCTIVE, DOUBLE_PLANS } from './batch-plans';
import { limitsOf } from './tolerable-error';
import { say } from '../words/say';

export interface BatchWeighing {
  readonly nominalG: Decimal;
  /** Packs in the batch: one kind, one run, one place, at most an hour of work. */
  readonly batchSize: number;
  readonly netWeightsG: readonly Decimal[];
  /** Opened to be weighed, so the sample can't be sold. */
  readonly destructive: boolean;
}

export type BatchVerdict =
  | { readonly state: 'accepted' | 'rejected'; readonly reasons: readonly string[] }
  /** The first sample decides nothing: a second one of the same size is due. */
  | { readonly state: 'weigh_more'; readonly reasons: readonly string[]; readonly more: number }
  | { readonly state: 'not_judged'; readonly reasons: readonly string[] };

export interface BatchTest {
  readonly verdict: BatchVerdict;
  readonly weighed: number;
  readonly meanG: Decimal | null;
  readonly deviationG: Decimal | null;
  readonly belowT1: number;
  readonly belowT2: number;
}

const meanOf = (weights: readonly Decimal[]): Decimal => sum(weights).dividedBy(weights.length);

/** Sample deviation, n − 1. */
const deviationOf = (weights: readonly Decimal[], mean: Decimal): Decimal =>
  sum(weights.map((weight) => weight.minus(mean).pow(2)))
    .dividedBy(weights.length - 1)
    .sqrt();

/** Judges the weighings of one batch by the packers' rules and the tests of Annex II. */
export const judgeBatch = (weighing: BatchWeighing): BatchTest => {
  const { nominalG, netWeightsG, batchSize } = weighing;
  const limits = limitsOf(nominalG);
  const meanG = netWeightsG.length > 0 ? meanOf(netWeightsG) : null;
  const deviationG = meanG && netWeightsG.length > 1 ? deviationOf(netWeightsG, meanG) : null;
  const facts = {
    weighed: netWeightsG.length,
    meanG,
    deviationG,
    belowT1: limits ? netWeightsG.filter((g) => g.lessThan(limits.t1G)).length : 0,
    belowT2: limits ? netWeightsG.filter((g) => g.lessThan(limits.t2G)).length : 0,
  };
  if (!limits)
    return { ...facts, verdict: notJudged(say`The rules cover packs from 5 g to 10 kg.`) };
  if (!meanG || netWeightsG.length > batchSize) {
    return {
      ...facts,
      verdict: notJudged(say`Weigh at least one pack, and no more than there are.`),
    };
  }
  const measured = { ...facts, nominalG, netWeightsG };
  if (batchSize < ALL_WEIGHED_UNDER) return { ...facts, verdict: allWeighed(measured, batchSize) };
  return {
    ...facts,
    verdict: weighing.destructive ? destructive(measured) : sampled(measured, batchSize),
  };
};

interface Measured {
  readonly nominalG: Decimal;
  readonly netWeightsG: readonly Decimal[];
  readonly weighed: number;
  readonly belowT1: number;
  readonly belowT2: number;
}

const notJudged = (reason: string): BatchVerdict => ({ state: 'not_judged', reasons: [reason] });

const verdict = (reasons: readonly string[]): BatchVerdict => ({
  state: reasons.length === 0 ? 'accepted' : 'rejected',
  reasons,
});

const noneBelowT2 = ({ belowT2 }: Measured): string[] =>
  belowT2 === 0 ? [] : [say`${belowT2} packs are below T2: take them out.`];

/** Tests the mean of the first `sample` packs against the nominal weight less k deviations. */
const meanReasons = (measured: Measured, sample: number, k: string): string[] => {
  const { nominalG } = measured;
  const weights = measured.netWeightsG.slice(0, sample);
  const meanG = meanOf(weights);
  const deviationG = weights.length > 1 ? deviationOf(weights, meanG) : new Decimal(0);
  const limit = nominalG.minus(deviationG.times(k));
  return meanG.greaterThanOrEqualTo(limit)
    ? []
    : [say`The mean ${meanG.toFixed(2)} g is below its limit ${limit.toFixed(2)} g.`];
};

/** Fewer than 100 packs: each is weighed and the mean itself must reach the nominal weight. */
const allWeighed = (measured: Measured, batchSize: number): BatchVerdict => {
  const missing = batchSize - measured.weighed;
  if (missing > 0) return { state: 'weigh_more', more: missing, reasons: [say`Weigh every pack.`] };
  // 2.5 % is the United Kingdom's figure (from memory); a small batch so allows one in forty.
  const few = Math.floor(batchSize / 40);
  const tooMany = measured.belowT1 > few ? [say`${measured.belowT1} packs are below T1.`] : [];
  return verdict([...meanReasons(measured, batchSize, '0'), ...tooMany, ...noneBelowT2(measured)]);
};

const destructive = (measured: Measured): BatchVerdict => {
  const { sample, accept, k } = DESTRUCTIVE;
  const missing = sample - measured.weighed;
  if (missing > 0)
    return { state: 'weigh_more', more: missing, reasons: [say`Weigh ${sample} packs.`] };
  const defective = measured.belowT1 > accept ? [say`${measured.belowT1} packs are below T1.`] : [];
  return verdict([...defective, ...meanReasons(measured, sample, k), ...noneBelowT2(measured)]);
};

const sampled = (measured: Measured, batchSize: number): BatchVerdict => {
  const plan = DOUBLE_PLANS.find(({ upTo }) => batchSize <= upTo);
  if (!plan) return notJudged(say`A batch has at most 10 000 packs: split it.`);
  const { sample, accept, reject, acceptBoth, meanSample, k } = plan;
  const { weighed, belowT1 } = measured;
  const both = sample * 2;
  if (weighed !== sample && weighed !== both) {
    const more = (weighed < sample ? sample : both) - weighed;
    return more > 0
      ? { state: 'weigh_more', more, reasons: [say`Samples have ${sample} packs each.`] }
      : notJudged(say`Samples have ${sample} packs each, two at most.`);
  }
  const allowed = weighed === sample ? accept : acceptBoth;
  if (weighed === sample && belowT1 > accept && belowT1 < reject) {
    return { state: 'weigh_more', more: sample, reasons: [say`${belowT1} packs are below T1.`] };
  }
  const defective = belowT1 > allowed ? [say`${belowT1} packs are below T1.`] : [];
  const mean = meanReasons(measured, meanSample, k);
  return verdict([...defective, ...mean, ...noneBelowT2(measured)]);
};
