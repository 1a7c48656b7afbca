import { alcoholGramsPer100g } from '@api/domain/composition';
import { Decimal } from '@api/domain/units';

describe('alcohol by weight', () => {
  it.each([
    [15, 12.1],
    [20, 16.2],
    [40, 33.3],
    [50, 42.4],
    [60, 52.1],
  ])('%d %% vol is %d g per 100 g (densities of the OIML tables, from memory)', (volume, grams) => {
    expect(alcoholGramsPer100g(new Decimal(volume))?.toNumber()).toBeCloseTo(grams, 0.8);
  });

  it.each([
    [10, 8.05],
    [20, 16.27],
    [30, 24.67],
    [33, 27.24],
  ])('%d %% vol is near %d in the USP alcoholometric table (15.56 °C)', (volume, grams) => {
    const found = alcoholGramsPer100g(new Decimal(volume))?.toNumber() ?? 0;
    expect(Math.abs(found - grams) / grams).toBeLessThan(0.007);
  });

  it('refuses a strength that can’t be', () => {
    expect(alcoholGramsPer100g(new Decimal(101))).toBe(null);
    expect(alcoholGramsPer100g(new Decimal(-1))).toBe(null);
  });
});
