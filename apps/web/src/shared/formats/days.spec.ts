import {
  addDays,
  dayBegins,
  dayEnds,
  daysBetween,
  formatDay,
  formatInstant,
  todayIn,
  weekStart,
} from './days';

describe('days of the workshop', () => {
  it('shows the day that was written, in any time zone', () => {
    expect(formatDay('en-GB', '2026-03-29')).toBe('29 Mar 2026');
    expect(formatDay('fr', '2026-03-29')).toBe('29 mars 2026');
  });

  it('counts across a leap day and a change of clocks', () => {
    expect(addDays('2028-02-28', 2)).toBe('2028-03-01');
    expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  });

  it('takes today from the workshop’s time zone, not from the tablet’s', () => {
    const lateInParis = new Date('2026-06-30T22:30:00Z');
    expect(todayIn('Europe/Paris', lateInParis)).toBe('2026-07-01');
    expect(todayIn('America/New_York', lateInParis)).toBe('2026-06-30');
  });

  it('shows instants in the workshop’s time zone', () => {
    expect(formatInstant('en-GB', 'Europe/Paris', '2026-01-05T08:30:00Z')).toContain('09:30');
  });

  it('begins a week on Monday', () => {
    expect(weekStart('2026-11-25')).toBe('2026-11-23');
    expect(weekStart('2026-11-29')).toBe('2026-11-23');
  });

  it.each([
    ['Europe/Paris', '2026-06-15', '2026-06-14T22:00:00.000Z', '2026-06-15T21:59:59.999Z'],
    ['America/New_York', '2026-01-10', '2026-01-10T05:00:00.000Z', '2026-01-11T04:59:59.999Z'],
    ['Pacific/Auckland', '2026-01-10', '2026-01-09T11:00:00.000Z', '2026-01-10T10:59:59.999Z'],
    ['UTC', '2026-01-10', '2026-01-10T00:00:00.000Z', '2026-01-10T23:59:59.999Z'],
    // 23 and 25 hours: the clocks go forward, and back.
    ['Europe/Paris', '2026-03-29', '2026-03-28T23:00:00.000Z', '2026-03-29T21:59:59.999Z'],
    ['Europe/Paris', '2026-10-25', '2026-10-24T22:00:00.000Z', '2026-10-25T22:59:59.999Z'],
  ])('begins and ends a day in %s on %s by the workshop’s clock', (zone, day, from, to) => {
    expect(dayBegins(zone, day)).toBe(from);
    expect(dayEnds(zone, day)).toBe(to);
  });
});
