import { Decimal } from '../../apps/api/src/domain/units';
import { drawItem, openBatch } from './bench';
import type { Calendar, Team } from './demo-client';
import type { MasterData } from './master-data';
import { takeOrders } from './office';

interface LotRow {
  readonly code: string;
  readonly supplierLotCode: string | null;
  readonly madeOn: string;
}

const lotsOf = async (team: Team, itemId: string | undefined): Promise<LotRow[]> =>
  (await team.owner.get<{ items: LotRow[] }>(`/lots?item=${itemId ?? ''}&limit=500`)).items;

/** A tray of domes is found chipped: what it cast since the last sound inspection is in doubt. */
const findChip = async (team: Team, data: MasterData, calendar: Calendar): Promise<void> => {
  const tag = data.moulds.get('dome')?.[2] ?? '';
  calendar.at(8, 8);
  for (const mould of data.moulds.get('dome') ?? []) {
    await team.maker.post(`/moulds/${mould}/inspections`, { result: 'sound' });
  }
  calendar.at(calendar.days - 1, 17);
  await team.maker.post(`/moulds/${tag}/inspections`, {
    result: 'chipped',
    note: 'Splinter missing at the rim of cavity 9, about 2 mm.',
  });
};

/** The nut mill writes about a lot of its first delivery, much of it eaten by now. */
const receiveWarning = async (team: Team, data: MasterData, calendar: Calendar): Promise<void> => {
  calendar.at(calendar.days, 8);
  const day = calendar.dayAfter(0, 0);
  const lot = (await lotsOf(team, data.items.get('Hazelnuts, roasted'))).find(
    (row) => row.madeOn === day,
  );
  if (lot === undefined) return;
  await team.maker.post(`/lots/${lot.code}/holds`, {
    reason:
      `Notice of Orrinfield Nut Mill this morning: pieces of shell possible in their lot ` +
      `${lot.supplierLotCode ?? ''}. Ask them what they know; trace it; decide.`,
  });
};

/** Three customers found something sharp, in boxes of two different weeks. */
const hearComplaints = async (team: Team, data: MasterData, calendar: Calendar): Promise<void> => {
  const nine = await lotsOf(team, data.items.get('Box of nine, assorted'));
  const sixteen = await lotsOf(team, data.items.get('Box of sixteen, assorted'));
  const madeIn = (rows: LotRow[], week: number): LotRow | undefined =>
    rows.find((row) => row.madeOn === calendar.dayAfter(week * 7 + 3, 0));
  const stories: [LotRow | undefined, number, string][] = [
    [madeIn(sixteen, 2), 24, 'Hotel guest bit on something hard and clear in a dark dome.'],
    [madeIn(nine, 4), 37, 'A sliver like glass in the round dark one; kept it in a napkin.'],
    [madeIn(sixteen, 4), 39, 'Sharp splinter in a dark chocolate, gum scratched.'],
  ];
  for (const [lot, day, what] of stories) {
    if (lot === undefined) continue;
    calendar.at(day, 15);
    await team.seller.post('/complaints', {
      codeAsRead: lot.code,
      kind: 'foreign_body',
      what,
      receivedOn: calendar.dayAfter(day, 0),
    });
  }
};

/** The morning's work is begun: a ganache is on the bench, its first lots weighed in. */
const beginBatch = async ({ maker }: Team, data: MasterData, calendar: Calendar): Promise<void> => {
  calendar.at(calendar.days, 8, 30);
  const batch = await openBatch(maker, data.items.get('Dark ganache') ?? '', {
    plannedQuantity: '459.000',
  });
  for (const [name, grams] of [
    ['Cream 35 %', '150'],
    ['Dark couverture 64 %', '225'],
  ] as const) {
    await drawItem(maker, batch.id, {
      itemId: data.items.get(name) ?? '',
      quantity: new Decimal(grams),
      role: 'base',
    });
  }
};

/** What the last days left behind for someone to find, and what today asks for. */
export const tellToday = async (
  team: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  await hearComplaints(team, data, calendar);
  await findChip(team, data, calendar);
  await receiveWarning(team, data, calendar);
  await takeOrders(team, data, calendar);
  await beginBatch(team, data, calendar);
};
