import { Decimal } from '../units';
import { batchesReached, gramsOf, lotGraph, makeUp, provenance, reach, sharesAhead } from '.';
import type { Batch, Loss } from '.';

const g = (value: number | string) => new Decimal(value);

const batch = (
  id: string,
  draws: Record<string, number | string>,
  outputs: Record<string, number | string>,
  losses: readonly Loss[] = [],
): Batch => ({
  id,
  draws: Object.entries(draws).map(([lot, mass]) => ({ lot, massG: g(mass), quantity: g(mass) })),
  losses,
  outputs: Object.entries(outputs).map(([lot, mass]) => ({ lot, massG: g(mass) })),
});

const graphOf = (...batches: Batch[]) => {
  const graph = lotGraph(batches);
  if (!graph.ok) throw new Error(graph.refusal.detail);
  return graph.value;
};

const gramsInside = (rows: ReturnType<typeof provenance>) =>
  Object.fromEntries(rows.map((row) => [row.lot, row.massG.toFixed(3)]));

describe('provenance', () => {
  it('takes strained-out tea from the tea alone', () => {
    const infusion = batch('B1', { cream: 1000, tea: 20 }, { infusion: 970 }, [
      { kind: 'held back', massG: g(50), lot: 'cream' },
    ]);
    expect(gramsInside(provenance(graphOf(infusion), 'infusion', g(970)))).toEqual({
      cream: '950.000',
      tea: '20.000',
    });
    const strained = batch('B2', { cream: 1000, tea: 20 }, { infusion: 1000 }, [
      { kind: 'held back', massG: g(20), lot: 'tea' },
    ]);
    const rows = provenance(graphOf(strained), 'infusion', g(1000));
    expect(gramsInside(rows)).toEqual({ cream: '1000.000', tea: '0.000' });
  });

  it('lets steam thin the mass but not the ingoing weight', () => {
    const caramel = batch('B1', { sugar: 600, cream: 600 }, { caramel: 980 }, [
      { kind: 'steam', massG: g(200), volatile: true },
      { kind: 'scrapings', massG: g(20) },
    ]);
    const [first, second] = provenance(graphOf(caramel), 'caramel', g(980));
    expect([first?.massG.toFixed(3), second?.massG.toFixed(3)]).toEqual(['490.000', '490.000']);
    // 600 g went in for 1000 g of caramel and scrapings, so 588 g for 980 g.
    expect([first?.ingoingG.toFixed(3), second?.ingoingG.toFixed(3)]).toEqual([
      '588.000',
      '588.000',
    ]);
  });

  it('keeps packaging in reach with no grams', () => {
    const box: Batch = {
      ...batch('P1', { pieces: 120 }, { box: 120 }),
      draws: [
        { lot: 'pieces', massG: g(120), quantity: g(12) },
        { lot: 'carton', massG: g(0), quantity: g(1) },
      ],
    };
    const graph = graphOf(box);
    expect(gramsInside(provenance(graph, 'box', g(120)))).toEqual({
      pieces: '120.000',
      carton: '0.000',
    });
    expect(reach(graph, ['carton']).map((row) => row.lot)).toEqual(['carton', 'box']);
  });

  it('nets a draw with the opposite entry that corrects it', () => {
    const corrected: Batch = {
      ...batch('B1', { cream: 100 }, { ganache: 100 }),
      draws: ['60', '50', '-10'].map((mass) => ({
        lot: mass === '60' ? 'chocolate' : 'cream',
        massG: g(mass),
        quantity: g(mass),
      })),
    };
    expect(gramsInside(provenance(graphOf(corrected), 'ganache', g(100)))).toEqual({
      chocolate: '60.000',
      cream: '40.000',
    });
  });

  it('walks a tank of 300 charges, each fed by its own heel, without walking paths', () => {
    const charges = Array.from({ length: 300 }, (_, n) =>
      batch(`C${n}`, { [`T${n}`]: 9000, [`N${n}`]: 3000 }, { [`T${n + 1}`]: 12000 }),
    );
    const graph = graphOf(...charges.reverse());
    const rows = provenance(graph, 'T300', g(12000));
    expect(rows).toHaveLength(600);
    // After n further charges a gram of the newest lot is thinned by (3/4)^n.
    expect(rows.find((row) => row.lot === 'N298')?.massG.toFixed(3)).toBe('2250.000');
    expect(rows.find((row) => row.lot === 'T0')?.massG.toFixed(3)).toBe('0.000');
    expect(reach(graph, ['T0'])).toHaveLength(301);
  });

  it('rounds an exact half milligram up although the walk truncates thirds', () => {
    const graph = graphOf(
      batch('B1', { a: 1, b: 2 }, { mix: 3 }),
      batch('B2', { mix: 3, a: 1, c: 2 }, { made: 6 }),
    );
    // a: 1/2 · 1/3 + 1/6 = 1/3 of the made lot; 0.0015 g of it holds exactly half a milligram.
    expect(gramsOf(sharesAhead(graph, ['a']).get('made') ?? 0n, g('0.003')).toFixed(3)).toBe(
      '0.001',
    );
    const half = graphOf(
      batch('B1', { a: 1, b: 2 }, { x: 3 }),
      batch('B2', { x: 3, a: 1 }, { y: 4 }),
    );
    expect(gramsOf(sharesAhead(half, ['a']).get('y') ?? 0n, g('0.001')).toFixed(3)).toBe('0.001');
  });

  it('prints the received parts so that they sum to the whole', () => {
    const graph = graphOf(batch('B1', { a: 1, b: 1, c: 1 }, { mix: 3 }));
    const parts = makeUp(graph, 'mix', g('0.010')).map((part) => part.massG.toFixed(3));
    expect(parts).toEqual(['0.004', '0.003', '0.003']);
  });

  it('reaches open and abandoned batches that made nothing', () => {
    const graph = graphOf(batch('B1', { a: 1 }, { x: 1 }), batch('B2', { x: 1 }, {}));
    expect(batchesReached(graph, sharesAhead(graph, ['a']))).toEqual(['B1', 'B2']);
  });
});

describe('lotGraph', () => {
  it('refuses a lot that is its own ancestor and names the circle', () => {
    const graph = lotGraph([
      batch('B0', { sugar: 1 }, { syrup: 1 }),
      batch('B1', { syrup: 1, rework: 1 }, { ganache: 2 }),
      batch('B2', { ganache: 2 }, { rework: 2 }),
      batch('B3', { rework: 1 }, { late: 1 }),
    ]);
    expect(graph.ok).toBe(false);
    if (graph.ok) return;
    expect(graph.refusal.code).toBe('lot-is-its-own-ancestor');
    expect(graph.refusal.facts?.['lots']).toEqual(['rework', 'ganache']);
  });

  it('refuses a lot with two origins', () => {
    const graph = lotGraph([batch('B1', { a: 1 }, { x: 1 }), batch('B2', { b: 1 }, { x: 1 })]);
    expect(graph.ok ? undefined : graph.refusal.code).toBe('lot-made-twice');
  });

  it.each([
    ['more is lost of a lot than was drawn', [{ kind: 'held back', massG: g(11), lot: 'tea' }]],
    ['a loss names a lot that was not drawn', [{ kind: 'held back', massG: g(1), lot: 'milk' }]],
    ['all that went in left as steam', [{ kind: 'steam', massG: g(110), volatile: true }]],
  ])('refuses when %s', (_, losses) => {
    const graph = lotGraph([batch('B1', { cream: 100, tea: 10 }, { infusion: 90 }, losses)]);
    expect(graph.ok ? undefined : graph.refusal.code).toBe('losses-exceed-draws');
  });
});
