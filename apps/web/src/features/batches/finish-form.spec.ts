import { finishBody, goodPieces, rejectedPieces, restOf, type FinishForm } from './finish-form';

const form: FinishForm = {
  quantity: '1900',
  mass: '',
  placeId: '',
  reworkItemId: '',
  reworkMass: '',
  rejectPieces: '',
  restKind: 'steam',
  minutes: '',
  imbalanceReason: '',
  keepTogether: false,
};
const filling = {
  unit: 'g' as const,
  balance: {
    drawnGrams: '2000',
    madeGrams: '0',
    lostGrams: '20',
    differenceGrams: '1980',
    drawnCost: '10',
  },
};
const use = (
  cavitiesFilled: number,
  rejectCavities: number[],
  withdrawnBecause: string | null = null,
) => ({
  withdrawnBecause,
  id: 'u',
  mouldTag: 'M1',
  designName: 'd',
  at: '2026-01-01T00:00:00Z',
  cavitiesFilled,
  rejectCavities,
});

describe('finishing a batch', () => {
  it('names the grams that are still open as what the person says they are', () => {
    expect(restOf(filling, form)).toBe('80');
    expect(finishBody(filling, form, 'g').losses).toEqual([{ kind: 'steam', massGrams: '80' }]);
  });

  it('leaves them open when nobody says what they are, so that the service asks', () => {
    expect(finishBody(filling, { ...form, restKind: '' }, 'g').losses).toEqual([]);
  });

  it('never invents a loss when more came out than went in', () => {
    expect(finishBody(filling, { ...form, quantity: '2100' }, 'g').losses).toEqual([]);
  });

  it('takes rework out of the rest and makes it a lot of its own', () => {
    const kept = { ...form, reworkItemId: 'r', reworkMass: '30' };
    expect(restOf(filling, kept)).toBe('50');
    expect(finishBody(filling, kept, 'g').outputs).toEqual([
      { quantity: '1900' },
      { role: 'rework', itemId: 'r', quantity: '30' },
    ]);
  });

  it('counts good and rejected pieces from the trays', () => {
    const batch = { mouldUses: [use(24, [3, 4]), use(20, [])] };
    expect(goodPieces(batch)).toBe(42);
    expect(rejectedPieces(batch)).toBe(2);
    const wrong = { mouldUses: [...batch.mouldUses, use(24, [1], 'another tray')] };
    expect(goodPieces(wrong)).toBe(42);
    expect(rejectedPieces(wrong)).toBe(2);
  });
});
