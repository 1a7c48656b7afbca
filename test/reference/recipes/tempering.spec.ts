import {
  COCOA_BUTTER_FORMS_C,
  dewPointC,
  heatToSetKjPerKg,
  judgeTempering,
  TABLE_CURVES,
} from '@api/domain/tempering';
import { Decimal } from '@api/domain/units';

const d = (value: number): Decimal => new Decimal(value);

describe('tempering windows (McGee, On Food and Cooking; a professional chocolate handbook)', () => {
  it.each([
    ['dark', [50, 55], [28, 29], [31, 32]],
    ['milk', [45, 50], [27, 28], [30, 31]],
    ['white', [45, 50], [26, 27], [29, 30]],
  ] as const)('%s', (product, melt, cool, work) => {
    const curve = TABLE_CURVES[product];
    const pair = (window: { lowC: Decimal; highC: Decimal } | null) =>
      window && [window.lowC.toNumber(), window.highC.toNumber()];
    expect([pair(curve.melt), pair(curve.cool), pair(curve.work)]).toEqual([melt, cool, work]);
  });

  it('works every chocolate between the melting points of forms IV and V (Wille & Lutton 1966)', () => {
    for (const product of ['dark', 'milk', 'white'] as const) {
      const { lowC, highC } = TABLE_CURVES[product].work;
      expect(lowC.greaterThan(COCOA_BUTTER_FORMS_C.IV)).toBe(true);
      expect(highC.lessThan(COCOA_BUTTER_FORMS_C.V)).toBe(true);
    }
  });

  it.each([
    ['30.9', 'low'],
    ['31', 'in'],
    ['32', 'in'],
    ['32.1', 'high'],
  ])('judges dark chocolate at work at %s °C as %s and says what next', (tempC, verdict) => {
    const judged = judgeTempering(TABLE_CURVES.dark, 'work', new Decimal(tempC));
    expect(judged.verdict).toBe(verdict);
    expect(judged.advice.length).toBeGreaterThan(20);
  });

  it('lets the maker’s own curve beat the table', () => {
    const own = { ...TABLE_CURVES.dark, work: { lowC: d(29), highC: d(30) }, source: 'its maker' };
    expect(judgeTempering(own, 'work', d(31)).verdict).toBe('high');
  });
});

describe('heat and air', () => {
  it('takes 68.3 kJ from a kg of dark chocolate from 32 to 18 °C (Beckett, physical constants)', () => {
    expect(heatToSetKjPerKg('dark', d(32), d(18)).toFixed(1)).toBe('68.3');
  });

  it.each([
    [20, 50, 9.26],
    [25, 60, 16.69],
  ])('dew point at %d °C and %d %% (Magnus form, WMO Guide No. 8)', (t, rh, point) => {
    expect(Math.abs(dewPointC(d(t), d(rh)).toNumber() - point)).toBeLessThan(0.1);
  });
});
