import { Decimal } from '../units';
import { inEnglish } from '../words/say';
import { impossibleReading } from './measures';

const said = (measure: string, value: string): string | null => {
  const sentence = impossibleReading(measure, new Decimal(value));
  return sentence === null ? null : inEnglish(sentence);
};

describe('a number that a measure can’t have', () => {
  it('says what to write when water activity was typed in per cent', () => {
    expect(said('water_activity', '75.4')).toContain('read 0.754');
    expect(said('water_activity', '754')).not.toContain('read');
    expect(said('water_activity', '-0.1')).not.toBeNull();
  });

  it.each([
    ['ph', '14.01'],
    ['humidity_percent', '100.5'],
    ['brix', '-1'],
    ['temp_c', '4000'],
  ])('is refused for %s: %s', (measure, value) => {
    expect(said(measure, value)).not.toBeNull();
  });

  it.each([
    ['water_activity', '0'],
    ['water_activity', '1'],
    ['ph', '14'],
    ['humidity_percent', '100'],
    ['temp_c', '-30'],
    ['mass_g', '123456'],
  ])('is let through for %s: %s', (measure, value) => {
    expect(said(measure, value)).toBeNull();
  });
});
