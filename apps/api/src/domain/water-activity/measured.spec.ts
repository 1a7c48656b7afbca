import { Temporal } from 'temporal-polyfill';
import { Decimal } from '../units';
import { modelRecord, rulingWaterActivity, type WaterActivity } from '.';

const estimate: WaterActivity = {
  status: 'estimated',
  value: new Decimal('0.85'),
  error: new Decimal('0.03'),
  allDissolved: 0.85,
  capped: 0.85,
  worst: new Decimal('0.88'),
  cautions: [{ code: 'estimate-not-measurement', level: 'warning', text: 'Estimate.' }],
};

const reading = (value: string, day: string, uncertainty: string | null) => ({
  value: new Decimal(value),
  measuredOn: Temporal.PlainDate.from(day),
  uncertainty: uncertainty === null ? null : new Decimal(uncertainty),
  instrument: 'meter 1',
});

describe('measured water activity', () => {
  it('overrides the estimate with its own error', () => {
    const ruling = rulingWaterActivity(estimate, [reading('0.821', '2026-11-20', '0.004')]);
    expect(ruling.basis).toBe('measured');
    expect(ruling.worst?.toFixed(3)).toBe('0.825');
  });

  it('takes the wettest reading of the latest day', () => {
    const ruling = rulingWaterActivity(estimate, [
      reading('0.90', '2026-11-01', '0.004'),
      reading('0.82', '2026-11-20', '0.004'),
      reading('0.83', '2026-11-20', '0.004'),
    ]);
    expect(ruling.worst?.toFixed(3)).toBe('0.834');
  });

  it('does not use a meter without a calibration, and says so', () => {
    const ruling = rulingWaterActivity(estimate, [reading('0.80', '2026-11-20', null)]);
    expect(ruling.basis).toBe('estimated');
    expect(ruling.cautions.map((row) => row.code)).toContain('meter-not-calibrated');
  });
});

describe('the workshop’s own table', () => {
  it('says how far estimates were from measurements', () => {
    const pair = (a: string, b: string) => ({ estimate: new Decimal(a), measured: new Decimal(b) });
    const record = modelRecord([pair('0.90', '0.89'), pair('0.85', '0.87')]);
    expect(record?.bias.toFixed(3)).toBe('-0.005');
    expect(record?.rootMeanSquare.toFixed(4)).toBe('0.0158');
    expect(record?.largest.toFixed(2)).toBe('-0.02');
  });

  it('says nothing of no pairs', () => {
    expect(modelRecord([])).toBe(null);
  });
});
