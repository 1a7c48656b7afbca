import type { Naming, TraceFact } from '@api/domain/epcis';
import { Decimal } from '@api/domain/units';

export const naming: Naming = { baseUri: 'https://workshop.example' };
const g = (lot: string, grams: number, gtin?: string) => ({
  lot,
  quantity: new Decimal(grams),
  unit: 'g' as const,
  ...(gtin === undefined ? {} : { gtin }),
});
const when = { at: '2026-03-02T09:30:00+01:00', offset: '+01:00', place: 'Cold store 1' };

/** One of each kind of fact, with signs in names that a URI must escape. */
export const facts: TraceFact[] = [
  {
    ...when,
    id: 'e1',
    kind: 'received',
    delivery: 'D-1',
    supplier: 'S/1',
    lots: [g('C 3', 2500)],
    supplierLot: 'X9',
    bestBefore: '2026-04-01',
  },
  {
    ...when,
    id: 'e2',
    kind: 'made',
    batch: 'B-1',
    step: 'making',
    inputs: [g('C 3', 500), g('carton', 0)],
    outputs: [g('G-7', 480.125, '9506000134352')],
    bestBefore: '2026-03-20',
  },
  {
    ...when,
    id: 'e3',
    kind: 'made',
    batch: 'B-2',
    step: 'charging',
    inputs: [g('T1', 9000), g('sack', 3000)],
    outputs: [g('T2', 12_000)],
  },
  {
    ...when,
    id: 'e4',
    kind: 'packed',
    batch: 'B-3',
    box: { lot: 'X-1', quantity: new Decimal(20), unit: 'pc' },
    contents: [{ lot: 'P-1', quantity: new Decimal(240), unit: 'pc' }],
  },
  {
    ...when,
    id: 'e5',
    kind: 'shipped',
    dispatch: 'DN-1',
    customer: 'Hotel',
    lots: [{ lot: 'X-1', quantity: new Decimal(5), unit: 'pc' }],
  },
  {
    ...when,
    id: 'e6',
    kind: 'shipped',
    dispatch: 'counter 2026-03-02',
    lots: [{ lot: 'X-1', quantity: new Decimal(5), unit: 'pc' }],
  },
  { ...when, id: 'e7', kind: 'destroyed', lots: [g('G-7', 20)] },
];
