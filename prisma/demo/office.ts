import type { Calendar, Team } from './demo-client';
import type { MasterData } from './master-data';
import type { CustomerKey } from './workshop';

interface PricedBox {
  readonly item: string;
  readonly mixed: boolean;
  /** Prices before and since the rise: counter with VAT, trade without. */
  readonly counter: readonly [string, string];
  readonly trade: readonly [string, string];
}

const PRICED: readonly PricedBox[] = [
  { item: 'Box of nine, assorted', mixed: true, counter: ['12.90', '13.90'], trade: ['8.60', '9.20'] },
  { item: 'Box of sixteen, assorted', mixed: true, counter: ['21.90', '23.90'], trade: ['14.80', '15.90'] },
  { item: 'Box of nine hazelnut hearts', mixed: false, counter: ['11.90', '11.90'], trade: ['7.40', '7.40'] },
]; // prettier-ignore

/** The day of the history on which prices rose. */
const RISE = 28;

/** Price rules, and prices that have changed once. */
export const setPrices = async (
  { owner }: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  for (const { item, mixed, counter, trade } of PRICED) {
    const path = `/items/${data.items.get(item) ?? ''}`;
    const { version } = await owner.get<{ version: number }>(path);
    await owner.change('PUT', `${path}/price-rule`, version, {
      counterTargetKind: 'margin',
      counterTargetPercent: '60',
      tradeTargetKind: 'margin',
      tradeTargetPercent: '45',
      mixedAssortment: mixed,
    });
    for (const [list, prices] of [['counter', counter], ['trade', trade]] as const) {
      const [before, since] = prices;
      await owner.post(`${path}/prices`, { list, price: before, fromDay: calendar.dayAfter(0, 0) });
      if (since === before) continue;
      const note = 'Couverture and cream dearer since the summer.';
      await owner.post(`${path}/prices`, { list, price: since, fromDay: calendar.dayAfter(RISE, 0), note });
    }
  }
}; // prettier-ignore

interface DemoOrder {
  readonly customer: CustomerKey;
  /** Days from today. */
  readonly dueIn: number;
  readonly lines: readonly (readonly [item: string, quantity: string])[];
  readonly note?: string;
}

const ORDERS: readonly DemoOrder[] = [
  { customer: 'grocer', dueIn: 4, lines: [['Box of nine, assorted', '8']] },
  {
    customer: 'hotel',
    dueIn: 6,
    lines: [['Box of sixteen, assorted', '6'], ['Box of nine hazelnut hearts', '4']],
    note: 'For the wedding on Saturday; by the back door before ten.',
  },
  { customer: 'restaurant', dueIn: 9, lines: [['Box of sixteen, assorted', '4']] },
  { customer: 'office', dueIn: 12, lines: [['Box of nine, assorted', '20']], note: 'Thanks to their people.' },
]; // prettier-ignore

/** What customers have asked for and nobody has made yet. */
export const takeOrders = async (
  { seller }: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  for (const { customer, dueIn, lines, note } of ORDERS) {
    await seller.post('/orders', {
      customerId: data.customers.get(customer),
      dueOn: calendar.dayAfter(calendar.days, dueIn),
      note: note ?? null,
      lines: lines.map(([item, quantity]) => ({ itemId: data.items.get(item), quantity })),
    });
  }
};
