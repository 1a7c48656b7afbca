import { inForce } from '../../domain/calendar/in-force';
import { splitShown, vatRateOn } from '../../domain/pricing';
import type { Demand } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import { dayFromDb } from '../../platform/database/days';
import { decimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { listOrders, sentByLine, sentOf } from '../orders';
import { allPrices, historyOf, type LoadedBasis } from '../pricing';
import { forecastOf } from './forecasts.service';
import type { PlanningSettingsDto } from './planning-settings.dto';

/** What a demand is for, in words a person finds it by. */
export interface NamedDemand extends Demand {
  readonly label: string;
}

/** Net price of one at the counter today: what it costs to go short when nothing was agreed. */
const counterValues = async (tx: Tx, basis: LoadedBasis): Promise<Map<string, Decimal>> => {
  const prices = await allPrices(tx, 'counter');
  const { day } = basis.costs;
  return new Map(
    [...basis.items.values()].flatMap((item): [string, Decimal][] => {
      const history = historyOf(prices.filter(({ itemId }) => itemId === item.id));
      const holding = inForce(history, day);
      if (!holding || item.vatClass === null) return [];
      const rate = vatRateOn(basis.vat, item.vatClass, day);
      return rate.ok ? [[item.id, splitShown(holding.price, 'counter', rate.value).net]] : [];
    }),
  );
};

/** Open orders less what was sent of them; what is overdue is due today. */
const orderDemands = async (
  tx: Tx,
  today: string,
  values: ReadonlyMap<string, Decimal>,
): Promise<NamedDemand[]> => {
  const orders = await listOrders(tx, { state: 'open' });
  const sent = await sentOf(
    tx,
    orders.map(({ id }) => id),
  );
  return orders.flatMap((order) => {
    const byLine = sentByLine(order, sent);
    const due = dayFromDb(order.dueOn);
    return order.lines.flatMap((line): NamedDemand[] => {
      const quantity = decimalFromDb(line.quantity).minus(byLine.get(line.id) ?? 0);
      if (!quantity.greaterThan(0)) return [];
      const agreed = line.netPrice === null ? undefined : decimalFromDb(line.netPrice);
      const valuePerUnit = agreed ?? values.get(line.itemId);
      return [
        {
          id: line.id,
          label: order.code,
          item: line.itemId,
          quantity,
          dueDay: due < today ? today : due,
          minLifeDays: order.minimumLifeDays,
          ...(valuePerUnit ? { valuePerUnit } : {}),
        },
      ];
    });
  });
};

/** Whole pieces a day that keep up with what the forecast expects in sum. */
const counterDemands = async (
  tx: Tx,
  basis: LoadedBasis,
  settings: PlanningSettingsDto,
  values: ReadonlyMap<string, Decimal>,
): Promise<NamedDemand[]> => {
  if (settings.forecastDays === 0) return [];
  const { day: today } = basis.costs;
  const demands: NamedDemand[] = [];
  for (const item of basis.items.values()) {
    if (!item.active || !basis.recipes.has(item.id)) continue;
    if (item.kind !== 'piece' && item.kind !== 'box') continue;
    const forecast = await forecastOf(tx, item.id, settings, today, today, settings.forecastDays);
    let expected = new Decimal(0);
    for (const day of forecast.days) {
      const before = expected.ceil();
      expected = expected.plus(day.expected);
      const quantity = expected.ceil().minus(before);
      if (quantity.isZero()) continue;
      const valuePerUnit = values.get(item.id);
      demands.push({
        id: `counter:${item.id}:${day.day}`,
        label: 'counter',
        item: item.id,
        quantity,
        dueDay: day.day,
        minLifeDays: 0,
        ...(valuePerUnit ? { valuePerUnit } : {}),
      });
    }
  }
  return demands;
};

export const loadDemands = async (
  tx: Tx,
  basis: LoadedBasis,
  settings: PlanningSettingsDto,
): Promise<NamedDemand[]> => {
  const values = await counterValues(tx, basis);
  return [
    ...(await orderDemands(tx, basis.costs.day, values)),
    ...(await counterDemands(tx, basis, settings, values)),
  ];
};
