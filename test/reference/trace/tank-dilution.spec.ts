import { lotGraph, makeUp, provenance, reach, type Batch } from '@api/domain/provenance';
import { Decimal } from '@api/domain/units';

// The dilution law of a well-stirred vessel that is drawn and topped up in turn:
// f(n) = (1 - d/M)^n, and e^-N after N vessel volumes of continuous flow. It is the washout of an
// ideal continuous stirred tank in any chemical-reaction-engineering text; the figures are computed.

const g = (value: number | string) => new Decimal(value);

const draw = (lot: string, mass: number) => ({
  lot,
  massG: g(mass),
  quantity: g(1),
});

/** Each charge draws all that is left of the tank's lot and tops it up to the full 12 kg. */
const charges = (count: number, fullG = 12_000, topUpG = 3_000): Batch[] =>
  Array.from({ length: count }, (_, n) => ({
    id: `charge ${n + 1}`,
    draws: [draw(`tank ${n}`, fullG - topUpG), draw(`sack ${n + 1}`, topUpG)],
    losses: [],
    outputs: [{ lot: `tank ${n + 1}`, massG: g(fullG) }],
  }));

const graphOf = (batches: readonly Batch[]) => {
  const graph = lotGraph(batches);
  if (!graph.ok) throw new Error(graph.refusal.detail);
  return graph.value;
};

describe('a topped-up tank of 12 kg, drawn 3 kg at a time', () => {
  it.each([
    [1, '0.7500'],
    [2, '0.5625'],
    [5, '0.2373'],
    [16, '0.0100'],
    [20, '0.0032'],
  ])('holds (1 - 3/12)^%i = %s of its first lot', (count, expected) => {
    const ahead = reach(graphOf(charges(count)), ['tank 0']);
    const share = ahead.find((row) => row.lot === `tank ${count}`);
    expect(share?.ratio.toFixed(4)).toBe(expected);
  });

  it('is near e^-4 = 0.0183 after four volumes when the top-ups are small', () => {
    const ahead = reach(graphOf(charges(400, 12_000, 120)), ['tank 0']);
    const ratio = ahead.find((row) => row.lot === 'tank 400')?.ratio.toNumber() ?? 0;
    expect(ratio).toBeGreaterThan(0.0178);
    expect(ratio).toBeLessThan(Math.exp(-4));
  });

  it('still counts a lot that dilution has left with less than a milligram as within reach', () => {
    const ahead = reach(graphOf(charges(80)), ['tank 0']);
    const last = ahead.find((row) => row.lot === 'tank 80');
    expect(last?.ratio.times(12_000).toFixed(3)).toBe('0.000');
    expect(last).toBeDefined();
  });
});

// Worked by hand: 12 kg of ganache with 3 kg of lot X go into 8 kg and 4 kg of pieces; trimmings of
// the first go into the next ganache.
describe('a ganache split over two castings, with trimmings reworked', () => {
  const batches: Batch[] = [
    {
      id: 'cook 1',
      draws: [draw('X', 3000), draw('other', 9000)],
      losses: [],
      outputs: [{ lot: 'G1', massG: g(12_000) }],
    },
    {
      id: 'cast 1',
      draws: [draw('G1', 8000)],
      losses: [],
      outputs: [
        { lot: 'B1', massG: g(7500) },
        { lot: 'trimmings', massG: g(500) },
      ],
    },
    {
      id: 'cast 2',
      draws: [draw('G1', 4000)],
      losses: [],
      outputs: [{ lot: 'B2', massG: g(4000) }],
    },
    {
      id: 'cook 2',
      draws: [draw('trimmings', 500), draw('cream', 1500)],
      losses: [],
      outputs: [{ lot: 'G2', massG: g(2000) }],
    },
  ];
  const graph = graphOf(batches);
  const gramsOfX = (lot: string, massG: number) =>
    provenance(graph, lot, g(massG))
      .find((row) => row.lot === 'X')
      ?.massG.toFixed(3);

  it('puts 2 kg of X into the 8 kg and 1 kg into the 4 kg', () => {
    expect(gramsOfX('B1', 8000)).toBe('2000.000');
    expect(gramsOfX('B2', 4000)).toBe('1000.000');
  });

  it('follows the trimmings into the second ganache', () => {
    expect(reach(graph, ['X']).map((row) => row.lot)).toEqual(
      expect.arrayContaining(['G1', 'B1', 'B2', 'trimmings', 'G2']),
    );
    expect(gramsOfX('G2', 2000)).toBe('125.000');
    expect(makeUp(graph, 'G2', g(2000))).toHaveLength(3);
  });
});
