import { foodCodeTableA, foodCodeTableB, listeriaNotSupported } from '@api/domain/growth-limits';
import { mouldFreeDays } from '@api/domain/shelf-life';
import { Decimal } from '@api/domain/units';

type Ph = string | null;
const ph = (text: Ph): Decimal | null => (text === null ? null : new Decimal(text));

describe('US Food Code, Table A: heat-treated and then packaged', () => {
  it.each<[string, Ph, string]>([
    ['0.92', null, 'stable'],
    ['0.92', '7.0', 'stable'],
    ['0.93', '5.6', 'stable'],
    ['0.93', '5.7', 'assess'],
    ['0.95', '5.6', 'stable'],
    ['0.95', null, 'assess'],
    ['0.96', '4.6', 'stable'],
    ['0.96', '4.7', 'assess'],
  ])('water activity %s, pH %s: %s', (aw, acidity, verdict) => {
    expect(foodCodeTableA(new Decimal(aw), ph(acidity))).toBe(verdict);
  });
});

describe('US Food Code, Table B: not heat-treated, or not packaged', () => {
  it.each<[string, Ph, string]>([
    ['0.87', null, 'stable'],
    ['0.88', '5.0', 'stable'],
    ['0.88', '5.1', 'assess'],
    ['0.90', '5.0', 'stable'],
    ['0.90', null, 'assess'],
    ['0.91', '4.6', 'stable'],
    ['0.91', '4.7', 'assess'],
    ['0.92', '4.6', 'stable'],
    ['0.93', '4.1', 'stable'],
    ['0.93', '4.2', 'assess'],
  ])('water activity %s, pH %s: %s', (aw, acidity, verdict) => {
    expect(foodCodeTableB(new Decimal(aw), ph(acidity))).toBe(verdict);
  });
});

describe('Regulation (EC) No 2073/2005, Listeria growth not supported (from memory)', () => {
  it.each<[string, Ph, boolean]>([
    ['0.92', null, true],
    ['0.93', null, false],
    ['0.94', '5.0', true],
    ['0.95', '5.0', false],
    ['0.99', '4.4', true],
  ])('water activity %s, pH %s: %s', (aw, acidity, answer) => {
    expect(listeriaNotSupported(new Decimal(aw), ph(acidity))).toBe(answer);
  });
});

describe('mould-free life of cake (bakery formula in an encyclopedia copy)', () => {
  it.each([
    ['0.75', 68.4, 35.1],
    ['0.80', 26.9, 16.6],
    ['0.81', 22.3, 14.3],
    ['0.85', 10.6, 7.9],
    ['0.90', 4.2, 3.7],
  ])('at %s', (aw, at21, at27) => {
    expect(mouldFreeDays(new Decimal(aw), 21)).toBeCloseTo(at21, 0.7);
    expect(mouldFreeDays(new Decimal(aw), 27)).toBeCloseTo(at27, 0.7);
  });

  it.each([
    ['0.81', 24, 14],
    ['0.85', 12, 8],
  ])('is within two days of a published cake at %s (moisture-measurement text)', (aw, d21, d27) => {
    expect(Math.abs((mouldFreeDays(new Decimal(aw), 21) ?? 0) - d21)).toBeLessThan(2);
    expect(Math.abs((mouldFreeDays(new Decimal(aw), 27) ?? 0) - d27)).toBeLessThan(2);
  });

  it('says nothing outside 0.74–0.90', () => {
    expect(mouldFreeDays(new Decimal('0.73'))).toBe(null);
    expect(mouldFreeDays(new Decimal('0.91'))).toBe(null);
  });
});
