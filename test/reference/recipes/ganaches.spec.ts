import { percentOf, relativeSweetness, totalFatG, totalG } from '@api/domain/composition';
import { estimateWaterActivity } from '@api/domain/water-activity';
import { G3, mixOf } from './serums';

/** Own worked ganaches; no published pair of full composition and measured value was found. */
const GANACHES = [
  { grams: { cream: 100, dark60: 100 }, figures: [29.95, 36.5, 19, 17.5], aw: 0.954 },
  { grams: { cream: 100, dark60: 150 }, figures: [24.16, 36.8, 22.8, 14], aw: 0.931 },
  { grams: G3, figures: [22.65, 34.6, 18.2, 16.4], aw: 0.897 },
  {
    grams: { cream: 100, dark70: 110, syrup42: 25, invert: 20, sorbitol: 15, butter: 20 },
    figures: [25.03, 33.7, 15.9, 17.7],
    aw: 0.907,
  },
] as const;

const awOf = (grams: Readonly<Record<string, number>>): number => {
  const result = estimateWaterActivity(mixOf(grams));
  if (result.status !== 'estimated') throw new Error('expected an estimate');
  return Math.max(result.allDissolved, result.capped);
};

describe('worked ganaches', () => {
  it.each(GANACHES)('$grams', ({ grams, figures, aw }) => {
    const mix = mixOf(grams);
    const { water, cocoaButter, milkFat } = mix.parts;
    const found = [water, totalFatG(mix), cocoaButter, milkFat].map((g) => percentOf(g, mix));
    figures.forEach((figure, index) => {
      expect(Math.abs((found[index]?.toNumber() ?? 0) - figure)).toBeLessThan(0.06);
    });
    expect(Math.abs(awOf(grams) - aw)).toBeLessThan(0.001);
  });

  it('a plain ganache of cream and chocolate reads above 0.90 (a dairy’s ganache page)', () => {
    expect(awOf({ cream: 100, dark60: 100 })).toBeGreaterThan(0.9);
  });

  it('sums the third to its totals', () => {
    const { parts, syrups, dairyAsh, fatFreeCocoa, inSyrup } = mixOf(G3);
    expect(totalG(mixOf(G3)).toNumber()).toBeCloseTo(313, 1);
    expect(parts.water.toNumber()).toBeCloseTo(70.9, 1);
    expect(parts.milkFat.toNumber()).toBeCloseTo(51.4, 2);
    expect(parts.cocoaButter.toNumber()).toBeCloseTo(57, 2);
    expect(fatFreeCocoa.toNumber()).toBeCloseTo(32.25, 2);
    expect(parts.sucrose.toNumber()).toBeCloseTo(58.5, 2);
    expect(syrups.get('42')?.toNumber()).toBeCloseTo(16, 2);
    expect(inSyrup.higherSaccharides.toNumber()).toBeCloseTo(16, 2);
    expect(parts.fructose.toNumber()).toBeCloseTo(5.85, 2);
    expect(parts.lactose.toNumber()).toBeCloseTo(3.22, 2);
    expect(parts.protein.toNumber()).toBeCloseTo(2.34, 2);
    expect(dairyAsh.toNumber()).toBeCloseTo(0.52, 2);
  });

  it('is worth −0.019 in alcohol when 15 g of a 40 % spirit stay in', () => {
    const withAlcohol = awOf({ ...G3, spirit40: 15 });
    const mix = mixOf({ ...G3, spirit40: 15 });
    const boiledOff = { ...mix, parts: { ...mix.parts, alcohol: mix.parts.alcohol.times(0) } };
    const without = estimateWaterActivity(boiledOff);
    if (without.status !== 'estimated') throw new Error('expected an estimate');
    expect(Math.abs(withAlcohol - 0.8916)).toBeLessThan(0.001);
    expect(Math.abs(without.allDissolved - 0.9107)).toBeLessThan(0.001);
  });

  it('has a relative sweetness of 27.3 (Bender’s sugars; syrup and sorbitol from memory)', () => {
    expect(Math.abs((relativeSweetness(mixOf(G3))?.toNumber() ?? 0) - 27.3)).toBeLessThan(0.15);
  });

  it('prints two decimals and ± 0.03 for a ganache', () => {
    const result = estimateWaterActivity(mixOf(G3));
    if (result.status !== 'estimated') throw new Error('expected an estimate');
    expect(result.value.toFixed()).toBe('0.9');
    expect(result.error.toFixed(2)).toBe('0.03');
    expect(result.cautions[0]?.text).toContain('Not a measurement');
  });
});
