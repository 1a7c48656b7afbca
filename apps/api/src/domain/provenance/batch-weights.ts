import type { Decimal } from '../units';
import { ok, refuse, type Result } from '../refusals/result';
import { toMilligrams } from './fixed-point';
import type { ProvenanceRefusal } from './refusals';
import { say } from '../words/say';

export interface Draw {
  readonly lot: string;
  /** Zero for packaging and for anything that is counted and not eaten: it stays in reach. */
  readonly massG: Decimal;
  /** In the lot's own stock unit. A correction is a further draw with both figures negative. */
  readonly quantity: Decimal;
}

export interface Loss {
  readonly kind: string;
  readonly massG: Decimal;
  /** The drawn lot that lost it (tea that is strained out); absent: the mix lost it evenly. */
  readonly lot?: string;
  /** Steam and the like, which leave without carrying anything else with them. */
  readonly volatile?: boolean;
}

export interface Output {
  readonly lot: string;
  readonly massG: Decimal;
}

/** One making, as recorded: a batch, a top-up of a tank, a tray that is cast, a box that is packed. */
export interface Batch {
  readonly id: string;
  readonly draws: readonly Draw[];
  readonly losses: readonly Loss[];
  readonly outputs: readonly Output[];
}

/**
 * The same making in whole milligrams, as the trace of a big graph reads it. `batchWeights` works on
 * this form; `inMilligrams` leads from the other to it.
 */
export interface BatchInMilligrams {
  readonly id: string;
  readonly draws: readonly { readonly lot: string; readonly mg: bigint }[];
  readonly losses: readonly {
    readonly mg: bigint;
    readonly lot?: string;
    readonly volatile?: boolean;
  }[];
  readonly outputs: readonly string[];
}

export const inMilligrams = (batch: Batch): BatchInMilligrams => ({
  id: batch.id,
  draws: batch.draws.map((draw) => ({ lot: draw.lot, mg: toMilligrams(draw.massG) })),
  losses: batch.losses.map(({ massG, lot, volatile = false }) => ({
    mg: toMilligrams(massG),
    ...(lot === undefined ? {} : { lot }),
    volatile,
  })),
  outputs: batch.outputs.map((output) => output.lot),
});

/** What each drawn lot gives to a gram of what was made, as `numerator[i] / denominator`. */
export interface Weighting {
  readonly numeratorsMg: readonly bigint[];
  /** Zero when nothing of weight went in (packaging only): every share is zero. */
  readonly denominatorMg: bigint;
}

export interface BatchWeights {
  /** Drawn lots, each once, in the order of their first draw. */
  readonly lots: readonly string[];
  /** Grams inside a finished gram: sums to one. */
  readonly mass: Weighting;
  /** Grams that went in for a finished gram: sums to more than one when steam was lost. */
  readonly ingoing: Weighting;
}

interface Tally {
  drawn: bigint;
  held: bigint;
  steamed: bigint;
}

const total = (values: readonly bigint[]): bigint =>
  values.reduce((running, value) => running + value, 0n);

/**
 * Reads the two weightings of a batch.
 *
 * Mass: a draw gives its weight less every loss named to its lot; the other losses are taken from
 * the mix and so carry each lot in proportion. Ingoing: steam doesn't dilute what went in, so a
 * draw gives its weight less the losses named to it that aren't volatile, divided by all of that
 * less all steam (which is the made weight plus scrapings, when the batch balances).
 */
export const batchWeights = (batch: BatchInMilligrams): Result<BatchWeights, ProvenanceRefusal> => {
  const tallies = new Map<string, Tally>();
  for (const draw of batch.draws) {
    const tally = tallies.get(draw.lot) ?? { drawn: 0n, held: 0n, steamed: 0n };
    tally.drawn += draw.mg;
    tallies.set(draw.lot, tally);
  }
  let steamedFromMix = 0n;
  for (const loss of batch.losses) {
    const { mg } = loss;
    const tally = loss.lot === undefined ? undefined : tallies.get(loss.lot);
    if (loss.lot !== undefined && !tally) return lossesExceed(batch, loss.lot);
    if (!tally) steamedFromMix += loss.volatile ? mg : 0n;
    else if (loss.volatile) tally.steamed += mg;
    else tally.held += mg;
  }
  const lots = [...tallies.keys()];
  const rows = [...tallies.values()];
  const mass = rows.map((row) => row.drawn - row.held - row.steamed);
  const ingoing = rows.map((row) => row.drawn - row.held);
  const short = mass.findIndex((mg) => mg < 0n);
  if (short >= 0) return lossesExceed(batch, lots[short]);
  const steam = steamedFromMix + total(rows.map((row) => row.steamed));
  const ingoingDenominator = total(ingoing) - steam;
  if (ingoingDenominator < 0n || (ingoingDenominator === 0n && total(ingoing) > 0n)) {
    if (batch.outputs.length > 0) return lossesExceed(batch);
  }
  return ok({
    lots,
    mass: { numeratorsMg: mass, denominatorMg: total(mass) },
    ingoing: { numeratorsMg: ingoing, denominatorMg: ingoingDenominator },
  });
};

const lossesExceed = (batch: BatchInMilligrams, lot?: string): Result<never, ProvenanceRefusal> =>
  refuse({
    code: 'losses-exceed-draws',
    detail:
      lot === undefined
        ? say`Batch ${batch.id} lost more than was drawn into it. Correct its draws or its losses.`
        : say`Batch ${batch.id} lost or gave back more of lot ${lot} than was drawn. Correct the draws or the losses of that lot.`,
    facts: { batch: batch.id, ...(lot === undefined ? {} : { lot }) },
  });
