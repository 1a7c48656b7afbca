import { lotGraph, provenance, type Batch } from '@api/domain/provenance';
import { carryThrough, scaleRecipe, yieldRatio, type StepLoss } from '@api/domain/scaling';
import { Decimal } from '@api/domain/units';

const d = (value: number | string): Decimal => new Decimal(value);
const loss = (step: string, percent: number | string, kind: StepLoss['kind']): StepLoss => ({
  step,
  percent: d(percent),
  kind,
  roles: ['filling'],
});

describe('a tank of 12 kg, well mixed, 3 kg drawn and topped up (dilution by (1 − d/M)ⁿ)', () => {
  it.each([
    [1, 0.75],
    [2, 0.5625],
    [5, 0.2373],
    [16, 0.01002],
    [20, 0.0032],
  ])('after %d top-ups %d of the first lot is left', (topUps, share) => {
    const batches: Batch[] = [];
    let content = 'first';
    for (let n = 1; n <= topUps; n += 1) {
      const next = `content-${n}`;
      batches.push({
        id: `charge-${n}`,
        draws: [
          { lot: content, massG: d(9000), quantity: d(9000) },
          { lot: `lot-${n}`, massG: d(3000), quantity: d(3000) },
        ],
        losses: [],
        outputs: [{ lot: next, massG: d(12000) }],
      });
      content = next;
    }
    const graph = lotGraph(batches);
    if (!graph.ok) throw new Error(graph.refusal.detail);
    const first = provenance(graph.value, content, d(12000)).find((row) => row.lot === 'first');
    expect(first?.massRatio.toNumber()).toBeCloseTo(share, topUps === 16 ? 5 : 4);
  });
});

/** Worked by hand: 3130 g of filling, transfer 98 %, piping 96.5 %, 4.72 g a piece, trays of 24. */
describe('yields multiply and needs divide', () => {
  const steps = [loss('transfer', 2, 'scrapings'), loss('piping', '3.5', 'scrapings')];

  it('needs 1030.93 g for 1000 g after a loss of 3 %, not 1030', () => {
    const ratio = yieldRatio([loss('strain', 3, 'scrapings')]);
    expect(ratio.ok && d(1000).dividedBy(ratio.value).toFixed(2)).toBe('1030.93');
  });

  it('carries 3130 g to 2960.041 g', () => {
    const carried = carryThrough(d(3130), steps);
    expect(carried.map((step) => step.out.toFixed(3))).toEqual(['3067.400', '2960.041']);
    expect(carried[1]?.out.dividedBy('4.72').toFixed(2)).toBe('627.13');
  });

  const recipe = {
    lines: [{ itemId: 'filling', unit: 'g' as const, quantity: d('4.72'), role: 'filling' }],
    losses: [
      ...steps,
      { step: 'demould and pack', kind: 'rejects' as const, percent: d(18).dividedBy('6.24') },
    ],
    yieldMassG: null,
    yieldPieces: 1,
    cavitiesPerTray: null,
  };

  it('fills 618 pieces with 3084.4 g for 600 good ones', () => {
    const scaled = scaleRecipe(recipe, { kind: 'pieces', pieces: d(600) });
    if (!scaled.ok) throw new Error(scaled.refusal.detail);
    expect(scaled.value.piecesToMake?.toNumber()).toBe(618);
    expect(scaled.value.lines[0]?.quantity.toFixed(1)).toBe('3084.4');
  });

  it('fills 26 whole trays of 24 with 3114.4 g and expects 606 good ones', () => {
    const scaled = scaleRecipe(
      { ...recipe, cavitiesPerTray: 24 },
      { kind: 'pieces', pieces: d(600) },
    );
    if (!scaled.ok) throw new Error(scaled.refusal.detail);
    expect(scaled.value.trays).toBe(26);
    expect(scaled.value.lines[0]?.quantity.toFixed(1)).toBe('3114.4');
    expect(scaled.value.expectedPieces?.toNumber()).toBe(606);
  });
});
