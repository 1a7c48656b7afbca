import { Decimal } from '@api/domain/units';
import {
  judgeCalibration,
  saltWaterActivity,
  type ReferenceSalt,
} from '@api/domain/water-activity';
import { byMolality } from './serums';

describe('sodium chloride at 25 °C (Tang, Munkelwitz & Wang 1986, Hamer–Wu form)', () => {
  it.each([
    [0.1, 0.9966],
    [0.5, 0.9835],
    [1, 0.9668],
    [2, 0.9312],
  ])('%d mol per kg is within 0.002', (m, reference) => {
    expect(Math.abs(byMolality('salt', m, 58.44) - reference)).toBeLessThan(0.0022);
  });

  it('is off above 2 mol per kg, so the model stops there', () => {
    expect(byMolality('salt', 5, 58.44) - 0.8065).toBeGreaterThan(0.01);
  });
});

describe('saturated salts (Greenspan 1977, J Res NBS 81A:89)', () => {
  it.each<[number, ReferenceSalt, number]>([
    [15, 'NaCl', 75.61],
    [20, 'NaCl', 75.48],
    [25, 'NaCl', 75.3],
    [30, 'NaCl', 75.09],
    [15, 'MgCl2', 33.3],
    [20, 'MgCl2', 33.07],
    [25, 'MgCl2', 32.79],
    [30, 'MgCl2', 32.45],
    [15, 'KCl', 85.92],
    [20, 'KCl', 85.11],
    [25, 'KCl', 84.35],
    [30, 'KCl', 83.63],
    [15, 'LiCl', 11.31],
    [20, 'LiCl', 11.31],
    [25, 'LiCl', 11.3],
    [30, 'LiCl', 11.29],
  ])('at %d °C %s holds %d %%', (tempC, salt, percent) => {
    const found = saltWaterActivity(salt, new Decimal(tempC)).times(100);
    expect(Math.abs(found.toNumber() - percent)).toBeLessThan(0.0101);
  });

  it.each<[ReferenceSalt, number]>([
    ['NaCl', 75.29],
    ['MgCl2', 32.78],
    ['KCl', 84.34],
  ])('prints within 0.02 of its own table for %s at 25 °C', (salt, printed) => {
    const found = saltWaterActivity(salt, new Decimal(25)).times(100).toNumber();
    expect(Math.abs(found - printed)).toBeLessThan(0.02);
  });
});

describe('calibration of a meter', () => {
  const read = (salt: ReferenceSalt, value: string) => ({
    salt,
    tempC: new Decimal(25),
    read: new Decimal(value),
  });

  it('passes when two salts are read within 0.010, and takes the larger deviation', () => {
    const verdict = judgeCalibration([read('NaCl', '0.757'), read('KCl', '0.8395')]);
    expect(verdict.passed).toBe(true);
    expect(verdict.uncertainty.toFixed(4)).toBe('0.0040');
  });

  it('does not pass on one salt', () => {
    expect(judgeCalibration([read('NaCl', '0.753')]).passed).toBe(false);
  });

  it('does not pass when a salt is off by 0.02', () => {
    expect(judgeCalibration([read('NaCl', '0.773'), read('KCl', '0.8434')]).passed).toBe(false);
  });

  it('never claims less than 0.003', () => {
    const verdict = judgeCalibration([read('NaCl', '0.7530'), read('KCl', '0.8435')]);
    expect(verdict.uncertainty.toFixed(3)).toBe('0.003');
  });
});
