import fc from 'fast-check';
import { lotGraph, reach } from '../provenance';
import { Decimal } from '../units';
import { recallSizes, type SentOut, splitProposal, type SlotSupply } from '.';

const runsOf = (boxes: number, supplies: SlotSupply[]) => {
  const proposal = splitProposal(boxes, supplies);
  if (!proposal.ok) throw new Error(proposal.refusal.detail);
  return proposal.value;
};

const supply = (item: string, piecesPerBox: number, lots: Record<string, number>): SlotSupply => ({
  item,
  piecesPerBox,
  lots: Object.entries(lots).map(([lot, pieces]) => ({ lot, pieces })),
});

describe('splitProposal', () => {
  it('splits where a piece lot changes and gives a box of two lots a run of its own', () => {
    const runs = runsOf(10, [supply('lemon', 4, { L1: 18, L2: 22 }), supply('nut', 2, { N1: 20 })]);
    expect(runs).toEqual([
      { firstBox: 1, lastBox: 4, boxes: 4, lots: ['L1', 'N1'] },
      { firstBox: 5, lastBox: 5, boxes: 1, lots: ['L1', 'L2', 'N1'] },
      { firstBox: 6, lastBox: 10, boxes: 5, lots: ['L2', 'N1'] },
    ]);
  });

  it('needs no split when nothing changes', () => {
    expect(runsOf(5, [supply('nut', 2, { N1: 10 })])).toHaveLength(1);
  });

  it('refuses pieces that do not fill the boxes', () => {
    const proposal = splitProposal(5, [supply('nut', 2, { N1: 9 })]);
    expect(proposal.ok ? undefined : proposal.refusal.code).toBe('pieces-do-not-fill-boxes');
  });

  it('never puts a lot on a run in which some box has none of it', () => {
    const lots = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(lots, fc.integer({ min: 1, max: 5 }), (sizes, piecesPerBox) => {
        const total = sizes.reduce((sum, size) => sum + size, 0);
        const spare = (piecesPerBox - (total % piecesPerBox)) % piecesPerBox;
        const filled = sizes.map((size, index) => (index === 0 ? size + spare : size));
        const boxes = (total + spare) / piecesPerBox;
        const sequence = filled.flatMap((size, index) => Array<string>(size).fill(`L${index}`));
        const named = Object.fromEntries(filled.map((size, index) => [`L${index}`, size]));
        const runs = runsOf(boxes, [supply('nut', piecesPerBox, named)]);
        expect(runs.reduce((sum, run) => sum + run.boxes, 0)).toBe(boxes);
        for (const run of runs) {
          for (let box = run.firstBox; box <= run.lastBox; box += 1) {
            const inBox = sequence.slice((box - 1) * piecesPerBox, box * piecesPerBox);
            expect([...new Set(inBox)]).toEqual(run.lots);
          }
        }
      }),
    );
  });
});

describe('recallSizes', () => {
  it('counts boxes, counter boxes and customers that each lot would touch', () => {
    const draw = (lot: string) => ({ lot, massG: new Decimal(1), quantity: new Decimal(1) });
    const made = (lot: string) => [{ lot, massG: new Decimal(2) }];
    const graph = lotGraph([
      { id: '1', draws: [draw('cream'), draw('sugar')], losses: [], outputs: made('A') },
      { id: '2', draws: [draw('milk'), draw('sugar')], losses: [], outputs: made('B') },
    ]);
    if (!graph.ok) throw new Error(graph.refusal.detail);
    const box = (lot: string, boxes: number, customer?: string): SentOut => ({
      lot,
      kind: 'box',
      quantity: new Decimal(boxes),
      ...(customer === undefined ? {} : { customer }),
    });
    const sent = [box('A', 10, 'hotel'), box('A', 3), box('B', 7, 'hotel'), box('B', 2, 'grocer')];
    const sizes = recallSizes(graph.value, ['cream', 'sugar'], sent, [
      { lot: 'B', kind: 'box', quantity: new Decimal(4) },
      { lot: 'sugar', kind: 'other', quantity: new Decimal(900) },
    ]);
    expect(JSON.parse(JSON.stringify(sizes))).toEqual([
      {
        lot: 'sugar',
        lots: 2,
        boxes: '22',
        pieces: '0',
        overTheCounter: '3',
        customers: 2,
        boxesHere: '4',
      },
      {
        lot: 'cream',
        lots: 1,
        boxes: '13',
        pieces: '0',
        overTheCounter: '3',
        customers: 1,
        boxesHere: '0',
      },
    ]);
  });

  it('finds the same lots in reach as a walk from each alone, in random graphs', () => {
    const shape = fc.array(fc.array(fc.nat(1000), { minLength: 1, maxLength: 4 }), {
      minLength: 1,
      maxLength: 25,
    });
    fc.assert(
      fc.property(shape, (plans) => {
        const lots = Array.from({ length: 40 }, (_, index) => `R${index}`);
        const asked = [...lots];
        const graph = lotGraph(
          plans.map((picks, number) => {
            const drawn = [...new Set(picks.map((pick) => lots[pick % lots.length] ?? 'R0'))];
            lots.push(`M${number}`);
            const one = new Decimal(1);
            const draws = drawn.map((lot) => ({ lot, massG: one, quantity: one }));
            return {
              id: `B${number}`,
              draws,
              losses: [],
              outputs: [{ lot: `M${number}`, massG: new Decimal(draws.length) }],
            };
          }),
        );
        if (!graph.ok) throw new Error(graph.refusal.detail);
        for (const size of recallSizes(graph.value, asked, [])) {
          expect(size.lots).toBe(reach(graph.value, [size.lot]).length - 1);
        }
      }),
    );
  });
});
