import { forecastCounter, observedSeasonFactor } from '@api/domain/demand';
import { Decimal, sum } from '@api/domain/units';
import fc from 'fast-check';
import { mean } from 'simple-statistics';
import { Temporal } from 'temporal-polyfill';

const D = (value: number | string): Decimal => new Decimal(value);
const OPEN = [2, 3, 4, 5, 6];
/** Tuesday 6 October 2026 on; Saturday sells three times a weekday. */
const history = (weeks: number, from = '2026-10-06') =>
  Array.from({ length: weeks * 7 }, (_, offset) =>
    Temporal.PlainDate.from(from).add({ days: offset }),
  )
    .filter(({ dayOfWeek }) => OPEN.includes(dayOfWeek))
    .map((day) => ({ day: day.toString(), quantity: D(day.dayOfWeek === 6 ? 30 : 10) }));

// Multiplicative ratio-to-mean decomposition, a textbook method (from memory); worked by hand:
// level (4 × 10 + 30) / 5 = 14, Saturday 30/14, other days 10/14.
describe('counter forecast', () => {
  const basis = { sales: history(4), seasons: [], openWeekdays: OPEN };

  it('finds level and weekday factors', () => {
    const forecast = forecastCounter(basis, '2026-11-03', 7);
    expect(forecast.level.toString()).toBe('14');
    expect(forecast.weekdayFactor.get(6)?.toFixed(4)).toBe('2.1429');
    expect(forecast.days.map(({ day, expected }) => [day, expected.toFixed(3)])).toEqual([
      ['2026-11-03', '10.000'],
      ['2026-11-04', '10.000'],
      ['2026-11-05', '10.000'],
      ['2026-11-06', '10.000'],
      ['2026-11-07', '30.000'],
    ]);
    expect(forecast.thin).toBe(false);
  });

  it('doubles a season to come and takes a past one out of the level', () => {
    const seasons = [
      { name: 'fair', fromDay: '2026-10-06', toDay: '2026-10-10', factor: D(2) },
      { name: 'feast', fromDay: '2026-11-07', toDay: '2026-11-07', factor: D(2) },
    ];
    const sales = history(4).map((sale) =>
      sale.day <= '2026-10-10' ? { ...sale, quantity: sale.quantity.times(2) } : sale,
    );
    const forecast = forecastCounter({ sales, seasons, openWeekdays: OPEN }, '2026-11-06', 2);
    expect(forecast.days.map(({ expected, season }) => [expected.toFixed(3), season])).toEqual([
      ['10.000', undefined],
      ['60.000', 'feast'],
    ]);
  });

  it('reads a factor off a past season without being fooled by two Saturdays', () => {
    const sales = history(6).map((sale) =>
      sale.day >= '2026-10-31' && sale.day <= '2026-11-07'
        ? { ...sale, quantity: sale.quantity.times(3) }
        : sale,
    );
    expect(observedSeasonFactor(sales, '2026-10-31', '2026-11-07')?.toFixed(6)).toBe('3.000000');
  });

  it('calls less than four weeks a guess, and knows nothing from nothing', () => {
    expect(forecastCounter({ ...basis, sales: history(3) }, '2026-11-03', 7).thin).toBe(true);
    const empty = forecastCounter({ ...basis, sales: [] }, '2026-11-03', 7);
    expect(sum(empty.days.map(({ expected }) => expected)).toString()).toBe('0');
  });

  it('expects of each weekday its own mean, as simple-statistics reckons it', () => {
    const quantities = fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(quantities, (values) => {
        const sales = history(4).map(({ day }, index) => ({
          day,
          quantity: D(values[index] ?? 0),
        }));
        const forecast = forecastCounter({ ...basis, sales }, '2026-11-03', 7);
        if (forecast.level.isZero()) return;
        forecast.days.forEach(({ day, expected }) => {
          const weekday = Temporal.PlainDate.from(day).dayOfWeek;
          const own = sales.filter(
            (sale) => Temporal.PlainDate.from(sale.day).dayOfWeek === weekday,
          );
          expect(expected.toNumber()).toBeCloseTo(
            mean(own.map(({ quantity }) => quantity.toNumber())),
            8,
          );
        });
      }),
    );
  });
});
