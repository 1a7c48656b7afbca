import { Fraction } from 'fraction.js';

/** An exact rational: the library's typings name the class as a value only. */
export type Rational = InstanceType<typeof Fraction>;

/**
 * The auditor: a second, slow and simple reading of the same record, in exact rationals of a
 * general-purpose library, by walking every path. It shares no code with the service.
 */
export interface AuditedBatch {
  readonly id: string;
  readonly draws: readonly { readonly lot: string; readonly grams: string }[];
  readonly losses: readonly {
    readonly grams: string;
    readonly lot?: string;
    readonly volatile?: boolean;
  }[];
  readonly outputs: readonly { readonly lot: string; readonly grams: string }[];
}

export const sumOf = (values: readonly Rational[]): Rational =>
  values.reduce((total, value) => total.add(value), new Fraction(0));

const gramsOf = (rows: readonly { readonly grams: string }[]): Rational =>
  sumOf(rows.map((row) => new Fraction(row.grams)));

/** Half up to the milligram, as text with three places. */
export const toMilligramText = (grams: Rational): string => {
  const mg = grams.mul(1000).add(new Fraction(1, 2)).floor();
  const digits = mg.toFraction().padStart(4, '0');
  return `${digits.slice(0, -3)}.${digits.slice(-3)}`;
};

export const makerOf = (batches: readonly AuditedBatch[], lot: string): AuditedBatch | undefined =>
  batches.find((batch) => batch.outputs.some((output) => output.lot === lot));

/** Grams that one drawn lot left in a batch's mix; steam named to a lot counts as still gone in. */
const givenBy = (batch: AuditedBatch, lot: string, ingoing: boolean): Rational => {
  const drawn = gramsOf(batch.draws.filter((draw) => draw.lot === lot));
  const lost = batch.losses.filter(
    (loss) => loss.lot === lot && !(ingoing && loss.volatile === true),
  );
  return drawn.sub(gramsOf(lost));
};

const drawnLots = (batch: AuditedBatch): string[] => [
  ...new Set(batch.draws.map((draw) => draw.lot)),
];

/** What a batch's mix came down to: the given grams, less all steam when what went in is asked. */
const mixOf = (batch: AuditedBatch, ingoing: boolean): Rational => {
  const given = sumOf(drawnLots(batch).map((lot) => givenBy(batch, lot, ingoing)));
  const steam = gramsOf(batch.losses.filter((loss) => loss.volatile === true));
  return ingoing ? given.sub(steam) : given;
};

/** Grams of every ancestor per gram of `lot`, added up path by path. */
export const contentsOf = (
  batches: readonly AuditedBatch[],
  lot: string,
  ingoing = false,
): Map<string, Rational> => {
  const contents = new Map<string, Rational>();
  const walk = (at: string, part: Rational): void => {
    contents.set(at, (contents.get(at) ?? new Fraction(0)).add(part));
    const batch = makerOf(batches, at);
    if (!batch) return;
    const mix = mixOf(batch, ingoing);
    for (const drawn of drawnLots(batch)) {
      const given = givenBy(batch, drawn, ingoing);
      walk(drawn, mix.equals(0) ? new Fraction(0) : part.mul(given).div(mix));
    }
  };
  walk(lot, new Fraction(1));
  return contents;
};

/** Every lot that a root may be inside of, the roots included: again path by path. */
export const reachOf = (
  batches: readonly AuditedBatch[],
  roots: readonly string[],
): ReadonlySet<string> => {
  const reached = new Set<string>();
  const walk = (lot: string): void => {
    reached.add(lot);
    for (const batch of batches) {
      if (batch.draws.some((draw) => draw.lot === lot)) {
        for (const output of batch.outputs) if (!reached.has(output.lot)) walk(output.lot);
      }
    }
  };
  for (const root of roots) walk(root);
  return reached;
};
