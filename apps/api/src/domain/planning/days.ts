import { Temporal } from 'temporal-polyfill';
import type { WorkCalendar } from './problem';

/** Days as whole numbers from the plan's first day, which is 0; earlier days are negative. */
export interface DayScale {
  readonly length: number;
  readonly indexOf: (day: string) => number;
  readonly dayAt: (index: number) => string;
  readonly isWorking: (index: number) => boolean;
}

export const dayScale = (today: string, length: number, calendar: WorkCalendar): DayScale => {
  const first = Temporal.PlainDate.from(today);
  const dayAt = (index: number): string => first.add({ days: index }).toString();
  const working = Array.from({ length }, (_, index) => {
    const day = first.add({ days: index });
    if (calendar.openDays.includes(day.toString())) return true;
    const closed = calendar.closedDays.includes(day.toString());
    return !closed && !calendar.closedWeekdays.includes(day.dayOfWeek);
  });
  const known = new Map(working.map((_, index): [string, number] => [dayAt(index), index]));
  return {
    length,
    indexOf: (day) =>
      known.get(day) ?? first.until(Temporal.PlainDate.from(day), { largestUnit: 'days' }).days,
    dayAt,
    isWorking: (index) => working[index] === true,
  };
};
