import type { components } from '../../api/schema';
import { bodyOf, formOf } from './settings-form';

const view: components['schemas']['PlanningSettingsView'] = {
  horizonDays: 28,
  closedWeekdays: [6, 7],
  dayMinutes: [{ day: '2026-12-25', minutes: 0 }],
  peopleMinutesPerDay: 480,
  tankMinutesPerDay: 0,
  tankMinutesPerTray: '1.50',
  mouldDays: 2,
  mouldPrice: null,
  extraHourPrice: '30.0000',
  reservationHours: 48,
  counterWeekdays: [2, 3],
  forecastDays: 14,
  seasons: [{ name: 'Feast', fromDay: '2026-12-01', toDay: '2026-12-24', factor: '2.0000' }],
  version: 3,
};

describe('the form of the planning rules', () => {
  it('sends back what it was given when nothing is changed', () => {
    const { version, ...rules } = view;
    expect(version).toBe(3);
    expect(bodyOf(formOf(view))).toEqual(rules);
  });

  it('closes the days on which nobody works', () => {
    expect(bodyOf({ ...formOf(view), workWeekdays: [1, 6] }).closedWeekdays).toEqual([
      2, 3, 4, 5, 7,
    ]);
  });

  it('never sends an emptied number as nought', () => {
    const body = bodyOf({ ...formOf(view), peopleMinutesPerDay: '' });
    expect(JSON.parse(JSON.stringify(body))).toMatchObject({ peopleMinutesPerDay: null });
  });
});
