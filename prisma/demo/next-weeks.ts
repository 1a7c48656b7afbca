import { Temporal } from 'temporal-polyfill';
import type { Calendar, Team } from './demo-client';
import { COUNTER_DAY } from './history';
import { INGREDIENTS } from './ingredients';
import type { MasterData } from './master-data';
import type { SupplierKey } from './workshop';

/** Days from an order to the goods, and the order below which nobody drives out here. */
const TERMS: Readonly<Record<SupplierKey, readonly [leadDays: number, minimum: string]>> = {
  cocoa: [5, '150.00'],
  dairy: [1, '25.00'],
  nuts: [6, '120.00'],
  sugar: [4, '60.00'],
  fruit: [3, '80.00'],
  spirits: [7, '50.00'],
  packaging: [14, '200.00'],
};

const agreeTerms = async ({ owner }: Team, data: MasterData): Promise<void> => {
  for (const { name, supplier, packG } of INGREDIENTS) {
    await owner.change('PUT', `/items/${data.items.get(name) ?? ''}/supply-term`, 0, {
      supplierId: data.suppliers.get(supplier),
      leadDays: TERMS[supplier][0],
      packQuantity: packG,
    });
  }
  for (const [supplier, [, amount]] of Object.entries(TERMS)) {
    const id = data.suppliers.get(supplier as SupplierKey) ?? '';
    await owner.change('PUT', `/suppliers/${id}/minimum-order`, 0, { amount });
  }
};

/** The weekday on which the history sells at the counter; it moves with the day of the filling. */
const counterWeekday = (calendar: Calendar): number =>
  Temporal.PlainDate.from(calendar.dayAfter(0, COUNTER_DAY)).dayOfWeek;

/** How the next weeks are planned: who orders what, a fair to come, and the plan of this morning. */
export const planAhead = async (
  team: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  const { owner, maker } = team;
  const from = (days: number): string => calendar.dayAfter(calendar.days, days);
  await agreeTerms(team, data);
  const { version, ...settings } = await owner.get<{ version: number }>('/plan/settings');
  await owner.change('PUT', '/plan/settings', version, {
    ...settings,
    peopleMinutesPerDay: 720,
    tankMinutesPerDay: 420,
    tankMinutesPerTray: '6',
    mouldDays: 2,
    mouldPrice: '24.0000',
    extraHourPrice: '36.0000',
    counterWeekdays: [counterWeekday(calendar)],
    forecastDays: 14,
    seasons: [{ name: 'Winter fair', fromDay: from(7), toDay: from(28), factor: '1.8' }],
  });
  await maker.post('/plan');
};
