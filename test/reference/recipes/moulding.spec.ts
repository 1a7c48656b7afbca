import { densityGPerMl, makeUpOf } from '@api/domain/composition';
import { cavityVolumes, chocolateShare, pieceMasses } from '@api/domain/moulding';
import { compositionOf } from '@api/domain/reference-ingredients';
import { Decimal } from '@api/domain/units';

const d = (value: number): Decimal => new Decimal(value);
const hemisphere = (wallMm: number) =>
  cavityVolumes({
    shape: { kind: 'hemisphere', diameterMm: d(30) },
    wallMm: d(wallMm),
    capGapMm: d(1.5),
    measuredVolumeMl: null,
  });

describe('hemisphere of 30 mm, chocolate 1.27 and filling 1.18 g/mL (worked by solid geometry)', () => {
  it.each([
    [1, 5.747, 1.3216, 1.678, 4.8269, 5.696, 1.168, 8.543, 33.3],
    [1.5, 5.153, 1.9156, 2.433, 4.2977, 5.071, 1.086, 8.59, 41],
    [1.8, 4.817, 2.2515, 2.859, 3.9995, 4.719, 1.038, 8.617, 45.2],
    [2, 4.6014, 2.4672, 3.133, 3.8085, 4.494, 1.007, 8.634, 48],
  ])('wall %d mm', (wall, inner, shell, shellG, filling, fillingG, capG, pieceG, percent) => {
    const volumes = hemisphere(wall);
    if (!volumes.ok) throw new Error(volumes.refusal.detail);
    const { value } = volumes;
    expect(value.cavityMl.toFixed(4)).toBe('7.0686');
    expect(value.innerMl.toNumber()).toBeCloseTo(inner, 4);
    expect(value.shellMl.toNumber()).toBeCloseTo(shell, 4);
    expect(value.fillingMl.toNumber()).toBeCloseTo(filling, 4);
    const masses = pieceMasses(value, d(1.27), d(1.18));
    expect(masses.shellG.toNumber()).toBeCloseTo(shellG, 2.9);
    expect(masses.fillingG.toNumber()).toBeCloseTo(fillingG, 2.9);
    expect(masses.capG.toNumber()).toBeCloseTo(capG, 2.9);
    expect(masses.pieceG.toNumber()).toBeCloseTo(pieceG, 2.9);
    const share = chocolateShare(masses.shellG.plus(masses.capG), masses.pieceG);
    expect(share.chocolatePercent.toNumber()).toBeCloseTo(percent, 1);
    expect(share.enough).toBe(true);
  });

  it('is exact where area times wall is 13 % too much', () => {
    const volumes = hemisphere(1.8);
    const area = 2 * Math.PI * 15 ** 2;
    const firstTerm = (area * 1.8) / 1000;
    expect(firstTerm).toBeCloseTo(2.545, 3);
    const exact = firstTerm * (1 - 1.8 / 15 + 1.8 ** 2 / (3 * 15 ** 2));
    expect(volumes.ok && volumes.value.shellMl.toNumber()).toBeCloseTo(exact, 6);
  });

  it('is the dome whose height is its radius', () => {
    const dome = cavityVolumes({
      shape: { kind: 'dome', baseDiameterMm: d(30), heightMm: d(15) },
      wallMm: d(1.8),
      capGapMm: d(1.5),
      measuredVolumeMl: null,
    });
    const round = hemisphere(1.8);
    if (!dome.ok || !round.ok) throw new Error('both fit');
    expect(dome.value.fillingMl.minus(round.value.fillingMl).abs().toNumber()).toBeLessThan(1e-9);
  });
});

describe('least chocolate in a filled chocolate (Directive 2000/36/EC, Annex I A.7 and A.10)', () => {
  it.each([
    [3.1, 12, '25.83', true],
    [2.9, 12, '24.17', false],
    [3, 12, '25.00', true],
  ])('%d g in %d g is %s %%', (chocolate, total, percent, enough) => {
    const share = chocolateShare(d(chocolate), d(total));
    expect([share.chocolatePercent.toFixed(2), share.enough]).toEqual([percent, enough]);
  });
});

describe('density of bars (H. Banks 2012, hydrostatic weighing), within 1.3 %', () => {
  it.each([
    ['81 % cocoa, 43 % fat', { cocoaButter: 43, fatFreeCocoa: 38, fibre: 38, sucrose: 19 }, 1.229],
    ['50 % cocoa, 26 % fat', { cocoaButter: 26, fatFreeCocoa: 24, fibre: 24, sucrose: 50 }, 1.33],
    ['70 % cocoa, 40 % fat', { cocoaButter: 40, fatFreeCocoa: 30, fibre: 30, sucrose: 30 }, 1.246],
  ])('%s', (_, figures, measured) => {
    const density = densityGPerMl(makeUpOf(compositionOf(figures), d(100)))?.toNumber() ?? 0;
    expect(Math.abs(density / measured - 1)).toBeLessThan(0.013);
  });
});
