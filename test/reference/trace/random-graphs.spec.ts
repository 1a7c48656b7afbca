import fc from 'fast-check';
import { Fraction } from 'fraction.js';
import { lotGraph, makeUp, provenance, reach, type Batch } from '@api/domain/provenance';
import { gramsOf } from '@api/domain/provenance';
import { Decimal, sum } from '@api/domain/units';
import {
  contentsOf,
  reachOf,
  toMilligramText,
  type AuditedBatch,
} from '../../support/auditor/rationals';
import { randomBatches } from '../../support/auditor/random-batches';

// Independent referee: exact rationals of fraction.js, path by path, with no code in common.

const recorded = (batch: AuditedBatch): Batch => ({
  id: batch.id,
  draws: batch.draws.map((draw) => ({
    lot: draw.lot,
    massG: new Decimal(draw.grams),
    quantity: new Decimal(draw.grams),
  })),
  losses: batch.losses.map((loss) => ({
    kind: 'any',
    massG: new Decimal(loss.grams),
    ...(loss.lot === undefined ? {} : { lot: loss.lot }),
    volatile: loss.volatile ?? false,
  })),
  outputs: batch.outputs.map((output) => ({
    lot: output.lot,
    massG: new Decimal(output.grams),
  })),
});

const graphOf = (batches: readonly AuditedBatch[]) => {
  const graph = lotGraph(batches.map(recorded));
  if (!graph.ok) throw new Error(graph.refusal.detail);
  return graph.value;
};

const madeLots = (batches: readonly AuditedBatch[]) => batches.flatMap((batch) => batch.outputs);

describe('random graphs against exact rationals', () => {
  it('give the same grams of every ancestor, to the milligram', () => {
    fc.assert(
      fc.property(randomBatches, (batches) => {
        const graph = graphOf(batches);
        for (const made of madeLots(batches)) {
          const inside = contentsOf(batches, made.lot);
          const wentIn = contentsOf(batches, made.lot, true);
          const rows = provenance(graph, made.lot, new Decimal(made.grams));
          expect(rows.map((row) => row.lot).sort()).toEqual(
            [...inside.keys()].filter((lot) => lot !== made.lot).sort(),
          );
          for (const row of rows) {
            const grams = (inside.get(row.lot) ?? new Fraction(0)).mul(made.grams);
            const ingoing = (wentIn.get(row.lot) ?? new Fraction(0)).mul(made.grams);
            expect(row.massG.toFixed(3)).toBe(toMilligramText(grams));
            expect(row.ingoingG.toFixed(3)).toBe(toMilligramText(ingoing));
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  it('give the same reach and the same grams of a root in every lot ahead', () => {
    fc.assert(
      fc.property(randomBatches, (batches) => {
        const graph = graphOf(batches);
        const ahead = reach(graph, ['R0']);
        expect(new Set(ahead.map((row) => row.lot))).toEqual(reachOf(batches, ['R0']));
        for (const made of madeLots(batches)) {
          const row = ahead.find((one) => one.lot === made.lot);
          const exact = contentsOf(batches, made.lot).get('R0');
          expect(row !== undefined).toBe(exact !== undefined);
          if (!row || !exact) continue;
          const found = gramsOf(row.share, new Decimal(made.grams)).toFixed(3);
          expect(found).toBe(toMilligramText(exact.mul(made.grams)));
        }
      }),
      { numRuns: 400 },
    );
  });

  it('print parts that sum to the whole', () => {
    fc.assert(
      fc.property(randomBatches, (batches) => {
        const graph = graphOf(batches);
        for (const made of madeLots(batches)) {
          const parts = makeUp(graph, made.lot, new Decimal(made.grams));
          if (parts.length === 0) continue;
          expect(sum(parts.map((part) => part.massG)).toFixed(3)).toBe(made.grams);
        }
      }),
      { numRuns: 200 },
    );
  });
});
