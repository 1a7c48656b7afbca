import { addDays, daysBetween, formatDay, formatInstant, todayIn, weekStart } from './days';

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
});
