import { Decimal } from '../../apps/api/src/domain/units';
import { onHand, portions } from './bench';
import { readDials } from './diary';
import type { Calendar, Team } from './demo-client';
import { type DemoIngredient, INGREDIENTS, PACKAGING } from './ingredients';
import { cast, cook, pack } from './making';
import type { MasterData } from './master-data';
import { PIECES } from './recipes';
import type { CustomerKey, SupplierKey } from './workshop';

/** Deliveries come to each supplier in the weeks named; 0 is the first. */
const DELIVERY_WEEKS: Readonly<Record<SupplierKey, readonly number[]>> = {
  cocoa: [0, 2, 4],
  dairy: [0, 1, 2, 3, 4, 5],
  nuts: [0, 2, 4],
  sugar: [0, 3],
  fruit: [0, 3],
  spirits: [0, 3],
  packaging: [0],
};

const HOURS = { receive: 9, cook: 9, cast: 10, pack: 14, send: 16, counter: 18 } as const;

const packagingRows = (suffix: string) =>
  PACKAGING.map((row) => ({
    name: row.name,
    line: {
      supplierLotCode: `FER-${suffix}`,
      quantity: row.pack,
      price: new Decimal(row.pack).times(row.pricePerPiece).toFixed(4),
    },
  }));

const temperatureOf = (row: DemoIngredient): string | null => {
  if (row.warmestTempC === undefined) return null;
  return new Decimal(row.warmestTempC).minus('1.8').toFixed(2);
};

/** Takes in what a supplier brings in one week. */
const receive = async (
  team: Team,
  data: MasterData,
  calendar: Calendar,
  at: { supplier: SupplierKey; week: number },
): Promise<void> => {
  const day = at.week * 7;
  calendar.at(day, HOURS.receive, Object.keys(DELIVERY_WEEKS).indexOf(at.supplier) * 5);
  const suffix = calendar.dayAfter(day, -3).replaceAll('-', '').slice(2);
  const lines =
    at.supplier === 'packaging'
      ? packagingRows(suffix)
      : INGREDIENTS.filter((row) => row.supplier === at.supplier).map((row, index) => ({
          name: row.name,
          line: {
            supplierLotCode: `${at.supplier.slice(0, 3).toUpperCase()}-${suffix}-${String(index + 1)}`,
            quantity: row.packG,
            price: new Decimal(row.packG).dividedBy(1000).times(row.pricePerKg).toFixed(4),
            tempC: temperatureOf(row),
            [row.perishable === true ? 'useBy' : 'bestBefore']: calendar.dayAfter(
              day,
              row.lifeDays,
            ),
            placeId: data.places.get(row.perishable === true ? 'Fridge' : 'Dry store'),
          },
        }));
  await team.maker.post('/deliveries', {
    supplierId: data.suppliers.get(at.supplier),
    reference: `Note ${suffix}`,
    lines: lines.map(({ name, line }) => ({ itemId: data.items.get(name), ...line })),
  });
};

const chargeTank = async (
  team: Team,
  data: MasterData,
  tank: 'dark' | 'milk',
  massG: string,
): Promise<void> => {
  const couverture = tank === 'dark' ? 'Dark couverture 64 %' : 'Milk couverture 38 %';
  const lots = await portions(team.maker, data.items.get(couverture) ?? '', new Decimal(massG));
  await team.maker.post(`/tanks/${data.tanks.get(tank) ?? ''}/charges`, {
    lots: lots.map(({ lotCode, quantity }) => ({ lotCode, quantity })),
  });
};

/** Tray 2 of the domes chips in the second week, unseen until the last one. */
const DARK_DOME_TRAYS = [
  [0, 1, 4, 5],
  [0, 1, 4, 5],
  [1, 2, 3, 4],
  [0, 1, 4, 5],
  [0, 2, 4, 5],
  [0, 1, 4, 5],
];

/** Share of the recipe that a week's trays need. */
const WEEKLY_COOKS = [
  ['Dark ganache', '0.15'],
  ['Smoked tea ganache', '0.15'],
  ['Salted caramel', '0.17'],
  ['Raspberry ganache', '0.14'],
  ['Hazelnut praline', '0.13'],
  ['Spirit ganache', '0.08'],
] as const;

const castWeek = async (team: Team, data: MasterData, week: number): Promise<void> => {
  await cast(team, data, 'Dark dome', { trays: DARK_DOME_TRAYS[week] ?? [0, 1, 4, 5], rejects: 2 });
  await cast(team, data, 'Spirit dome', { trays: [6, 7], rejects: 1 });
  await cast(team, data, 'Tea square', { trays: [0, 1, 2], rejects: 3 });
  await cast(team, data, 'Caramel square', { trays: [3, 4, 5], rejects: week === 3 ? 6 : 2 });
  await cast(team, data, 'Raspberry heart', { trays: [0, 1, 2], rejects: 2 });
  await cast(team, data, 'Hazelnut heart', { trays: [3, 4, 5], rejects: 0 });
};

interface Sale {
  readonly customer: CustomerKey;
  readonly lines: readonly (readonly [item: string, quantity: number])[];
}

const salesOf = (week: number): readonly Sale[] => [
  { customer: 'hotel', lines: [['Box of sixteen, assorted', 5]] },
  { customer: 'grocer', lines: [['Box of nine, assorted', 6], ['Box of nine hazelnut hearts', 1]] },
  { customer: 'restaurant', lines: [['Box of sixteen, assorted', 3]] },
  ...(week % 2 === 0 ? [{ customer: 'office', lines: [['Box of nine, assorted', 3]] } as const] : []),
]; // prettier-ignore

type Line = readonly [item: string, quantity: Decimal];

const send = async (
  team: Team,
  data: MasterData,
  customer: CustomerKey | null,
  lines: readonly Line[],
): Promise<void> => {
  const sent: { lotCode: string; quantity: string }[] = [];
  for (const [item, quantity] of lines) {
    if (!quantity.greaterThan(0)) continue;
    const taken = await portions(team.seller, data.items.get(item) ?? '', quantity);
    sent.push(
      ...taken.map((line) => ({ ...line, quantity: new Decimal(line.quantity).toFixed(0) })),
    );
  }
  await team.seller.post('/dispatches', {
    customerId: customer === null ? null : data.customers.get(customer),
    lines: sent,
  });
};

/** Pieces that stay for next week when the counter has sold the loose ones. */
const KEPT_PIECES = 6;

/** Day of each week of the history, from 0, on which the counter is open. */
export const COUNTER_DAY = 5;

/** A day at the counter: a few boxes, and nearly all the loose pieces. */
const sellAtCounter = async (team: Team, data: MasterData): Promise<void> => {
  const lines: Line[] = [
    ['Box of nine, assorted', new Decimal(2)],
    ['Box of sixteen, assorted', new Decimal(1)],
  ];
  for (const { name } of PIECES) {
    const left = await onHand(team.seller, data.items.get(name) ?? '');
    lines.push([name, left.minus(KEPT_PIECES)]);
  }
  await send(team, data, null, lines);
};

const week = async (
  team: Team,
  data: MasterData,
  calendar: Calendar,
  number: number,
): Promise<void> => {
  const first = number * 7;
  for (const [supplier, weeks] of Object.entries(DELIVERY_WEEKS) as [SupplierKey, number[]][]) {
    if (weeks.includes(number)) await receive(team, data, calendar, { supplier, week: number });
  }
  calendar.at(first + 1, HOURS.cook);
  for (const [filling, share] of WEEKLY_COOKS) await cook(team, data, filling, share);
  if (number === 1) await cook(team, data, 'Pistachio and almond praline', '0.2');
  if (number === 2) await cook(team, data, 'Passion-fruit jelly', '0.4');
  calendar.at(first + 2, HOURS.cast - 2);
  await chargeTank(team, data, 'dark', number === 0 ? '5000' : '1300');
  await chargeTank(team, data, 'milk', number === 0 ? '4000' : '900');
  calendar.at(first + 2, HOURS.cast);
  await castWeek(team, data, number);
  calendar.at(first + 3, HOURS.pack);
  await pack(team, data, 'Box of nine, assorted', 12);
  await pack(team, data, 'Box of sixteen, assorted', 10);
  await pack(team, data, 'Box of nine hazelnut hearts', 2);
  calendar.at(first + 4, HOURS.send);
  for (const { customer, lines } of salesOf(number)) {
    const counted = lines.map(([item, count]): Line => [item, new Decimal(count)]);
    await send(team, data, customer, counted);
  }
  calendar.at(first + COUNTER_DAY, HOURS.counter);
  await sellAtCounter(team, data);
};

/** Six weeks of goods in, making, packing and sending, and the rounds past the dials. */
export const liveSixWeeks = async (
  team: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  for (let number = 0; number < 6; number += 1) {
    await week(team, data, calendar, number);
    for (let day = number * 7; day < (number + 1) * 7; day += 1) {
      await readDials(team, data, calendar, day);
    }
  }
};
