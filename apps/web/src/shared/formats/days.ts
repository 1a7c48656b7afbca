/** A day (YYYY-MM-DD) has no time zone: it is shown as the calendar day that it names. */
const asUtc = (day: string): Date => new Date(`${day}T00:00:00Z`);

export const formatDay = (locale: string, day: string): string =>
  new Intl.DateTimeFormat(locale, {
    timeZone: 'UTC',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(asUtc(day));

export const formatWeekday = (locale: string, day: string): string =>
  new Intl.DateTimeFormat(locale, {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'short',
  }).format(asUtc(day));

/** Name of a day of the week, Monday = 1 … Sunday = 7. */
export const formatDayOfWeek = (locale: string, day: number): string =>
  new Intl.DateTimeFormat(locale, { timeZone: 'UTC', weekday: 'long' }).format(
    // The first of January 2024 was a Monday.
    new Date(Date.UTC(2024, 0, day)),
  );

/** An instant, shown in the workshop's time zone whatever the tablet's own is. */
export const formatInstant = (locale: string, timeZone: string, instant: string): string =>
  new Intl.DateTimeFormat(locale, {
    timeZone,
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(instant));

/** The day that it is now in the workshop. */
export const todayIn = (timeZone: string, now: Date = new Date()): string =>
  new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(now);

export const addDays = (day: string, days: number): string => {
  const date = asUtc(day);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
};

export const daysBetween = (from: string, to: string): number =>
  Math.round((asUtc(to).getTime() - asUtc(from).getTime()) / 86_400_000);

/** Monday of the week that the day lies in. */
export const weekStart = (day: string): string => addDays(day, -((asUtc(day).getUTCDay() + 6) % 7));

/** Milliseconds by which a zone's clocks are ahead of UTC at a moment. */
const aheadOfUtc = (timeZone: string, at: number): number => {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  }).formatToParts(new Date(at));
  const part = (type: string): number => Number(parts.find((one) => one.type === type)?.value);
  const wall = Date.UTC(
    part('year'),
    part('month') - 1,
    part('day'),
    part('hour'),
    part('minute'),
    part('second'),
  );
  return wall - Math.floor(at / 1000) * 1000;
};

/** The moment at which a day begins in the workshop, whatever the tablet's own time zone is. */
export const dayBegins = (timeZone: string, day: string): string => {
  const wall = asUtc(day).getTime();
  // Twice, because the clocks may change between the guess and the day's own beginning.
  const guess = wall - aheadOfUtc(timeZone, wall);
  return new Date(wall - aheadOfUtc(timeZone, guess)).toISOString();
};

/** The last moment of a day in the workshop. */
export const dayEnds = (timeZone: string, day: string): string =>
  new Date(Date.parse(dayBegins(timeZone, addDays(day, 1))) - 1).toISOString();
