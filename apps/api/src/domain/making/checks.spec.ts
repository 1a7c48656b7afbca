import { Decimal } from '../units';
import {
  checkCharge,
  checksDue,
  judge,
  standingDeviations,
  stepChecks,
  type TakenReading,
} from '.';

const d = (text: string): Decimal => new Decimal(text);

describe('stepChecks', () => {
  it('reads the check points of steps, numbers or text, and passes over what is no check', () => {
    const steps = [
      { title: 'Boil', checks: [{ measure: 'temp_c', low: '82', high: 95 }, { note: 'stir' }] },
      { title: 'Rest', restHours: 12 },
      'not a step',
    ];
    expect(stepChecks(steps)).toEqual([
      { step: 'Boil', measure: 'temp_c', low: d('82'), high: d('95') },
    ]);
    expect(stepChecks(null)).toEqual([]);
  });
});

describe('judge', () => {
  const limits = { low: d('82'), high: d('95') };
  it.each([
    ['81.999', 'low'],
    ['82', 'in'],
    ['95', 'in'],
    ['95.001', 'high'],
  ])('%s is %s', (value, verdict) => {
    expect(judge(d(value), limits)).toBe(verdict);
  });

  it('gives no verdict without limits', () => {
    expect(judge(d('20'), { low: null, high: null })).toBe('no_limit');
  });
});

describe('deviations', () => {
  const reading = (id: string, verdict: TakenReading['verdict'], step = 'Boil'): TakenReading => ({
    id,
    step,
    measure: 'temp_c',
    verdict,
    withdrawn: false,
  });
  const ids = (readings: TakenReading[]): string[] => readings.map(({ id }) => id);

  it('stand until a later reading of the same check is within its limits', () => {
    expect(ids(standingDeviations([reading('a', 'low')]))).toEqual(['a']);
    expect(ids(standingDeviations([reading('a', 'low'), reading('b', 'in')]))).toEqual([]);
    expect(ids(standingDeviations([reading('a', 'in'), reading('b', 'high')]))).toEqual(['b']);
    const elsewhere = [reading('a', 'low'), reading('b', 'in', 'Cool')];
    expect(ids(standingDeviations(elsewhere))).toEqual(['a']);
  });

  it('stand when the reading is only marked as wrong, until the check is read again', () => {
    const wrong = { ...reading('a', 'low'), withdrawn: true };
    expect(ids(standingDeviations([wrong]))).toEqual(['a']);
    expect(ids(standingDeviations([wrong, reading('b', 'in')]))).toEqual([]);
    const againWrong = { ...reading('b', 'in'), withdrawn: true };
    expect(ids(standingDeviations([reading('a', 'low'), againWrong]))).toEqual(['a']);
    const checks = [{ step: 'Boil', measure: 'temp_c', low: d('82'), high: null }];
    expect(checksDue(checks, [wrong])).toEqual(checks);
  });

  it('are not the same as checks that are still due', () => {
    const checks = stepChecks([
      { title: 'Boil', checks: [{ measure: 'temp_c' }, { measure: 'ph' }] },
    ]);
    expect(checksDue(checks, [reading('a', 'low')]).map(({ measure }) => measure)).toEqual(['ph']);
  });
});

describe('checkCharge', () => {
  const tank = {
    name: 'Wheel',
    itemId: 'dark',
    itemName: 'Dark couverture',
    capacityG: d('6000'),
    heelG: d('1000'),
  };
  const line = { lotCode: 'L1', itemId: 'dark', itemName: 'Dark', massG: d('5000'), rework: false };

  it('fills a tank to its brim and no further', () => {
    expect(checkCharge(tank, [line])).toMatchObject({ ok: true });
    expect(checkCharge(tank, [{ ...line, massG: d('5000.001') }])).toMatchObject({
      refusal: { code: 'tank-overfull', facts: { overGrams: '0.001' } },
    });
  });

  it('takes another item only as rework', () => {
    const milk = { ...line, itemId: 'milk' };
    expect(checkCharge(tank, [milk])).toMatchObject({ refusal: { code: 'tank-holds-another' } });
    expect(checkCharge(tank, [{ ...milk, rework: true }])).toMatchObject({ ok: true });
  });
});
