import type { Season } from '../../domain/demand';
import type { WorkCalendar } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import type { Workshop } from '../../generated/prisma/client';
import type { PlanningSettingsDto, PlanningSettingsView } from './planning-settings.dto';

/** One person, Monday to Friday, two weeks ahead, until the workshop says how it works. */
const USUAL: PlanningSettingsDto = {
  horizonDays: 28,
  closedWeekdays: [6, 7],
  dayMinutes: [],
  peopleMinutesPerDay: 480,
  tankMinutesPerDay: 0,
  tankMinutesPerTray: '0',
  mouldDays: 1,
  mouldPrice: null,
  extraHourPrice: null,
  reservationHours: 48,
  counterWeekdays: [2, 3, 4, 5, 6],
  forecastDays: 0,
  seasons: [],
};

export const planningSettings = (workshop: Workshop): PlanningSettingsView => {
  const settings = workshop.settings as Readonly<Record<string, Partial<PlanningSettingsDto>>>;
  return { ...USUAL, ...settings['planning'], version: workshop.version };
};

/** A day with minutes of its own is open when it has some and closed when it has none. */
export const calendarOf = (settings: PlanningSettingsDto): WorkCalendar => ({
  closedWeekdays: settings.closedWeekdays,
  closedDays: settings.dayMinutes.filter(({ minutes }) => minutes === 0).map(({ day }) => day),
  openDays: settings.dayMinutes.filter(({ minutes }) => minutes > 0).map(({ day }) => day),
});

export const seasonsOf = (settings: PlanningSettingsDto): Season[] =>
  settings.seasons.map((season) => ({ ...season, factor: new Decimal(season.factor) }));
