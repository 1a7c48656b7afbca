import { Decimal } from '../units';
import { cavityVolumes, weighedParts, weighingStatistics } from '.';

const grams = (...values: number[]): Decimal[] => values.map((value) => new Decimal(value));

describe('ten weighings', () => {
  it('have a mean and the spread of a sample (n − 1)', () => {
    const sample = weighingStatistics(grams(2, 4, 4, 4, 5, 5, 7, 9));
    expect(sample.ok && sample.value.meanG.toNumber()).toBe(5);
    expect(sample.ok && sample.value.standardDeviationG.toFixed(4)).toBe('2.1381');
  });

  it.each([[grams(3)], [grams(3, 0)], [[]]])('are refused when unusable', (masses) => {
    expect(weighingStatistics(masses).ok).toBe(false);
  });

  it('give the parts as differences of means', () => {
    const parts = weighedParts({
      shellsG: grams(2.8, 3),
      filledG: grams(7.6, 7.6),
      cappedG: grams(8.6, 8.8),
    });
    expect(parts.ok && parts.value.fillingG.toFixed(1)).toBe('4.7');
    expect(parts.ok && parts.value.capG.toFixed(1)).toBe('1.1');
  });

  it('are refused when filled pieces weigh less than empty ones', () => {
    const weighings = { shellsG: grams(3, 3), filledG: grams(2, 2), cappedG: grams(4, 4) };
    expect(weighedParts(weighings).ok).toBe(false);
  });
});

describe('a drawn cavity', () => {
  const block = {
    kind: 'block',
    lengthMm: new Decimal(30),
    widthMm: new Decimal(20),
    heightMm: new Decimal(12),
  } as const;
  const cavity = {
    shape: block,
    wallMm: new Decimal(2),
    capGapMm: new Decimal('1.5'),
    measuredVolumeMl: null,
  };

  it('of a block follows its formula', () => {
    const found = cavityVolumes(cavity);
    expect(found.ok && found.value.innerMl.toFixed(3)).toBe('4.160');
    expect(found.ok && found.value.fillingMl.toFixed(3)).toBe('3.536');
  });

  it('is corrected by its measured volume in every part', () => {
    const found = cavityVolumes({ ...cavity, measuredVolumeMl: new Decimal('6.48') });
    expect(found.ok && found.value.fillingMl.toFixed(4)).toBe('3.1824');
  });

  it('is refused when the wall leaves no room', () => {
    expect(cavityVolumes({ ...cavity, wallMm: new Decimal(10) }).ok).toBe(false);
    expect(cavityVolumes({ ...cavity, capGapMm: new Decimal(11) }).ok).toBe(false);
  });
});
