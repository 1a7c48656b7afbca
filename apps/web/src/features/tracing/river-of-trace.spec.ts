import type { components } from '../../api/schema';
import { riverOf } from './river-of-trace';

type Trace = components['schemas']['TraceView'];
type Lot = components['schemas']['TracedLotView'];

const lot = (code: string, part: Partial<Lot> = {}): Lot => ({
  code,
  side: 'ahead',
  itemName: code,
  itemKind: 'filling',
  unit: 'g',
  madeByBatch: null,
  madeQuantity: '0',
  madeMassGrams: '0',
  onHandQuantity: '0',
  onHandMassGrams: '0',
  madeOn: '2026-01-01',
  bestBefore: null,
  useBy: null,
  place: null,
  held: false,
  refused: false,
  supplier: null,
  supplierLotCode: null,
  sharedMassGrams: null,
  sharedRatio: null,
  ...part,
});

const trace: Trace = {
  direction: 'both',
  askedAt: '2026-01-02T00:00:00Z',
  roots: ['cream'],
  because: null,
  sharesProblem: null,
  lots: [
    lot('cream', { supplier: 'Dairy', madeMassGrams: '1000' }),
    lot('a', { madeByBatch: 'B1', madeMassGrams: '300' }),
    lot('b', { madeByBatch: 'B1', madeMassGrams: '100' }),
  ],
  batches: [],
  flows: [{ batch: 'B1', lot: 'cream', quantity: '400', massGrams: '400' }],
  heelLinks: [],
  dispatches: [
    {
      lot: 'a',
      dispatch: 'D1',
      customerId: null,
      customer: null,
      sentOn: '2026-01-02',
      quantity: '1',
      massGrams: '120',
      returnedQuantity: '0',
      returnedMassGrams: '0',
      sharedMassGrams: null,
    },
    {
      lot: 'a',
      dispatch: 'D2',
      customerId: null,
      customer: null,
      sentOn: '2026-01-03',
      quantity: '1',
      massGrams: '80',
      returnedQuantity: '0',
      returnedMassGrams: '0',
      sharedMassGrams: null,
    },
  ],
  moves: [],
  failedReadings: [],
};

describe('a trace drawn as a river', () => {
  const river = riverOf(trace, { supplier: (name) => `from ${name}`, counter: 'counter' });

  it('runs from suppliers through lots to customers', () => {
    expect(river.nodes.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['from Dairy', 'cream\ncream', 'a\na', 'counter']),
    );
  });

  it('shares what was drawn among the lots of the batch by their weight', () => {
    const between = river.flows.filter(({ from }) => from === 'cream');
    expect(between.map(({ to, grams }) => [to, Number(grams)])).toEqual([
      ['a', 300],
      ['b', 100],
    ]);
  });

  it('adds up what one customer got of a lot', () => {
    expect(river.flows.find(({ to }) => to === 'customer:')?.grams).toBe('200');
  });

  it('is as wide as what the question is about, not as the sack that it came from', () => {
    const ofBox = riverOf(
      {
        ...trace,
        roots: ['box'],
        lots: [
          lot('sugar', {
            side: 'behind',
            supplier: 'Mill',
            madeMassGrams: '25000',
            sharedMassGrams: '5',
          }),
          lot('filling', {
            side: 'behind',
            madeByBatch: 'B1',
            madeMassGrams: '500',
            sharedMassGrams: '50',
          }),
          lot('box', {
            side: 'root',
            madeByBatch: 'B2',
            madeMassGrams: '100',
            sharedMassGrams: '100',
          }),
        ],
        flows: [
          { batch: 'B1', lot: 'sugar', quantity: '60', massGrams: '60' },
          { batch: 'B2', lot: 'filling', quantity: '50', massGrams: '50' },
        ],
        dispatches: [],
      },
      { supplier: (name) => name, counter: 'counter' },
    );
    expect(ofBox.flows.map(({ from, to, grams }) => [from, to, Number(grams)])).toEqual([
      ['supplier:Mill', 'sugar', 5],
      ['sugar', 'filling', 6],
      ['filling', 'box', 50],
    ]);
  });
});
