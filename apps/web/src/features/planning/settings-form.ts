import type { components } from '../../api/schema';
import { newId } from '../../api/new-id';

type View = components['schemas']['PlanningSettingsView'];
type Body = components['schemas']['PlanningSettingsDto'];

export interface SpecialDay {
  readonly key: string;
  readonly day: string;
  readonly minutes: string;
}

export interface SeasonForm {
  readonly key: string;
  readonly name: string;
  readonly fromDay: string;
  readonly toDay: string;
  readonly factor: string;
}

const WHOLE = [
  'horizonDays',
  'peopleMinutesPerDay',
  'tankMinutesPerDay',
  'mouldDays',
  'reservationHours',
  'forecastDays',
] as const;
type WholeName = (typeof WHOLE)[number];

/** Numbers stand as they are typed until they are sent. */
export interface SettingsForm extends Readonly<Record<WholeName, string>> {
  readonly workWeekdays: readonly number[];
  readonly counterWeekdays: readonly number[];
  readonly tankMinutesPerTray: string;
  readonly mouldPrice: string;
  readonly extraHourPrice: string;
  readonly dayMinutes: readonly SpecialDay[];
  readonly seasons: readonly SeasonForm[];
}

export const WEEK = [1, 2, 3, 4, 5, 6, 7] as const;

export const newDay = (day: string): SpecialDay => ({ key: newId(), day, minutes: '0' });

export const newSeason = (day: string): SeasonForm => ({
  key: newId(),
  name: '',
  fromDay: day,
  toDay: day,
  factor: '',
});

export const formOf = (view: View): SettingsForm => ({
  ...(Object.fromEntries(WHOLE.map((name) => [name, String(view[name])])) as Record<
    WholeName,
    string
  >),
  workWeekdays: WEEK.filter((day) => !view.closedWeekdays.includes(day)),
  counterWeekdays: view.counterWeekdays,
  tankMinutesPerTray: view.tankMinutesPerTray,
  mouldPrice: view.mouldPrice ?? '',
  extraHourPrice: view.extraHourPrice ?? '',
  dayMinutes: view.dayMinutes.map(({ day, minutes }) => ({
    key: newId(),
    day,
    minutes: String(minutes),
  })),
  seasons: view.seasons.map((season) => ({ ...season, key: newId() })),
});

/** A number that isn't written is sent as none, which the service refuses at its field. */
const wholeOf = (text: string): number => (text === '' ? Number.NaN : Number(text));

const orNull = (text: string): string | null => (text === '' ? null : text);

export const bodyOf = (form: SettingsForm): Body => ({
  ...(Object.fromEntries(WHOLE.map((name) => [name, wholeOf(form[name])])) as Record<
    WholeName,
    number
  >),
  closedWeekdays: WEEK.filter((day) => !form.workWeekdays.includes(day)),
  counterWeekdays: [...form.counterWeekdays].sort((a, b) => a - b),
  tankMinutesPerTray: form.tankMinutesPerTray,
  mouldPrice: orNull(form.mouldPrice),
  extraHourPrice: orNull(form.extraHourPrice),
  dayMinutes: form.dayMinutes.map(({ day, minutes }) => ({ day, minutes: wholeOf(minutes) })),
  seasons: form.seasons.map(({ name, fromDay, toDay, factor }) => ({
    name: name.trim(),
    fromDay,
    toDay,
    factor,
  })),
});
