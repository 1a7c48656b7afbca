import fc from 'fast-check';
import { Fraction } from 'fraction.js';
import {
  type Batch,
  gramsOf,
  lotGraph,
  type LotGraph,
  provenance,
  reach,
} from '@api/domain/provenance';
import { Decimal } from '@api/domain/units';
import { diamondsOf, reworkOf, tankOf } from '../../support/auditor/deep-batches';
import {
  type AuditedBatch,
  contentsOf,
  type Rational,
  reachOf,
  toMilligramText,
} from '../../support/auditor/rationals';

// Independent referee: exact rationals of fraction.js, path by path, with no code in common. Where
// the paths are too many to walk, a recurrence of two rationals stands in for them.

const recorded = (batch: AuditedBatch): Batch => ({
  id: batch.id,
  draws: batch.draws.map((draw) => ({
    lot: draw.lot,
    massG: new Decimal(draw.grams),
    quantity: new Decimal(draw.grams),
  })),
  losses: batch.losses.map((loss) => ({ kind: 'any', massG: new Decimal(loss.grams) })),
  outputs: batch.outputs.map((output) => ({ lot: output.lot, massG: new Decimal(output.grams) })),
});

const graphOf = (batches: readonly AuditedBatch[]): LotGraph => {
  const graph = lotGraph(batches.map(recorded));
  if (!graph.ok) throw new Error(graph.refusal.detail);
  return graph.value;
};

const massOf = (batches: readonly AuditedBatch[], lot: string): string =>
  batches.flatMap((batch) => batch.outputs).find((output) => output.lot === lot)?.grams ?? '0';

const agreesBehind = (batches: readonly AuditedBatch[], graph: LotGraph, lot: string): void => {
  const mass = massOf(batches, lot);
  const exact = contentsOf(batches, lot);
  const rows = provenance(graph, lot, new Decimal(mass));
  expect(rows.map((row) => row.lot).sort()).toEqual(
    [...exact.keys()].filter((ancestor) => ancestor !== lot).sort(),
  );
  for (const row of rows) {
    const grams = (exact.get(row.lot) ?? new Fraction(0)).mul(mass);
    expect(`${row.lot} ${row.massG.toFixed(3)}`).toBe(`${row.lot} ${toMilligramText(grams)}`);
  }
};

const agreesAhead = (batches: readonly AuditedBatch[], graph: LotGraph, root: string): void => {
  const ahead = reach(graph, [root]);
  expect(new Set(ahead.map((row) => row.lot))).toEqual(reachOf(batches, [root]));
};

describe('a tank of 300 charges that was never recorded clean', () => {
  it('holds exactly what the auditor finds, to the milligram, and every lot stays in reach', () => {
    fc.assert(
      fc.property(tankOf(300), (batches) => {
        const graph = graphOf(batches);
        for (const lot of ['T299', 'T150', 'T1']) agreesBehind(batches, graph, lot);
        for (const root of ['R0', 'R1', 'R298']) agreesAhead(batches, graph, root);
        expect(reach(graph, ['R0'])).toHaveLength(301);
      }),
      { numRuns: 5 },
    );
  });
});

describe('rework of rework, 200 cooks long', () => {
  it('carries the first cook into the last, by the auditor’s grams', () => {
    fc.assert(
      fc.property(reworkOf(200), (batches) => {
        const graph = graphOf(batches);
        for (const lot of ['L199', 'L60']) agreesBehind(batches, graph, lot);
        for (const root of ['R0', 'L0', 'R6']) agreesAhead(batches, graph, root);
        expect(reach(graph, ['L0']).map((row) => row.lot)).toContain('L199');
      }),
      { numRuns: 5 },
    );
  });
});

describe('diamond upon diamond', () => {
  it('is what the auditor finds on all 512 paths of nine levels', () => {
    fc.assert(
      fc.property(diamondsOf(9), (batches) => {
        const graph = graphOf(batches);
        for (const lot of ['D8-0', 'D8-1', 'D4-0']) agreesBehind(batches, graph, lot);
        agreesAhead(batches, graph, 'R0');
      }),
      { numRuns: 20 },
    );
  });

  it('takes as many steps as it has batches: 60 levels hold 2^60 paths', () => {
    fc.assert(
      fc.property(diamondsOf(60), (batches) => {
        const graph = graphOf(batches);
        expect(reach(graph, ['R0'])).toHaveLength(121);
        // Part of R0 in each of the two lots of a level, level by level.
        let parts: [Rational, Rational] = [new Fraction(1), new Fraction(0)];
        for (let level = 0; level < 60; level += 1) {
          const of = (side: number): Rational => {
            const batch = batches[2 * level + side];
            const [first, second] = (batch?.draws ?? []).map((draw) => new Fraction(draw.grams));
            const [a, b] = [first ?? new Fraction(0), second ?? new Fraction(0)];
            return parts[0].mul(a).add(parts[1].mul(b)).div(a.add(b));
          };
          parts = [of(0), of(1)];
        }
        for (const side of [0, 1] as const) {
          const lot = `D59-${String(side)}`;
          const mass = massOf(batches, lot);
          const share = reach(graph, ['R0']).find((row) => row.lot === lot)?.share ?? 0n;
          expect(gramsOf(share, new Decimal(mass)).toFixed(3)).toBe(
            toMilligramText(parts[side].mul(mass)),
          );
        }
      }),
      { numRuns: 5 },
    );
  });
});
