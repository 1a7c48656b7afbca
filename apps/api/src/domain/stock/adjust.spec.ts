import { Decimal } from '../units';
import { countDifference, removal } from './adjust';

const d = (text: string): Decimal => new Decimal(text);
const lot = {
  code: '261125-0017',
  unit: 'g' as const,
  onHand: { quantity: d('800'), massG: d('800'), cost: d('8') },
};
const made = { quantity: d('1000'), massG: d('1000') };

describe('countDifference', () => {
  it('books what is missing, with its weight and cost', () => {
    const found = countDifference(lot, d('760'), made);
    expect(found).toMatchObject({ ok: true });
    if (found.ok) expect(found.value?.cost.toFixed(4)).toBe('-0.4000');
  });

  it('books nothing when the count agrees', () => {
    expect(countDifference(lot, d('800'), made)).toEqual({ ok: true, value: null });
  });

  it('adds what was found in the proportion of what is there', () => {
    const found = countDifference(lot, d('840'), made);
    if (found.ok) expect(found.value?.massG.toFixed(3)).toBe('40.000');
    expect(found.ok).toBe(true);
  });

  it('finds goods in a lot that was thought empty without giving them a cost', () => {
    const none = { quantity: d('0'), massG: d('0'), cost: d('0') };
    const found = countDifference({ ...lot, onHand: none }, d('50'), made);
    if (found.ok) {
      expect(found.value?.massG.toFixed(3)).toBe('50.000');
      expect(found.value?.cost.isZero()).toBe(true);
    }
    expect(found.ok).toBe(true);
  });

  it('refuses less than nought and half a piece', () => {
    expect(countDifference(lot, d('-1'), made)).toMatchObject({ ok: false });
    expect(countDifference({ ...lot, unit: 'pc' }, d('800.5'), made)).toMatchObject({ ok: false });
  });
});

describe('removal', () => {
  it('refuses more than is there', () => {
    expect(removal(lot, d('800.001'))).toMatchObject({
      ok: false,
      refusal: { code: 'not-enough-on-hand' },
    });
  });
});
