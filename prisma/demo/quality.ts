import { Decimal } from '../../apps/api/src/domain/units';
import type { Calendar, DemoClient, Team } from './demo-client';
import type { MasterData } from './master-data';

const CURVES = {
  'Dark couverture 64 %': { product: 'dark', melt: [48, 52], cool: [28, 29], work: [31, 32] },
  'Milk couverture 38 %': { product: 'milk', melt: [43, 47], cool: [27, 28], work: [29, 30] },
} as const;

/** The windows of temperature on the couvertures' own sheets. */
export const setTemperingCurves = async ({ owner }: Team, data: MasterData): Promise<void> => {
  const window = ([low, high]: readonly [number, number]): object => ({
    lowC: new Decimal(low).toFixed(2),
    highC: new Decimal(high).toFixed(2),
  });
  for (const [name, { product, melt, cool, work }] of Object.entries(CURVES)) {
    const path = `/items/${data.items.get(name) ?? ''}`;
    const { version } = await owner.get<{ version: number }>(path);
    await owner.change('PUT', `${path}/tempering`, version, {
      product,
      melt: window(melt),
      cool: window(cool),
      work: window(work),
      source: 'Sheet of Quenmark Cocoa Traders (invented)',
    });
  }
};

const METER = 'Water-activity meter';

interface LotRow {
  readonly code: string;
  readonly madeOn: string;
}

const lotMadeOn = async (
  client: DemoClient,
  itemId: string | undefined,
  day: string,
): Promise<string | undefined> => {
  const { items } = await client.get<{ items: LotRow[] }>(`/lots?item=${itemId ?? ''}&limit=500`);
  return items.find((lot) => lot.madeOn === day)?.code;
};

/** The meter is held against two salts every second week. */
const CALIBRATIONS = [
  { day: 1, readings: ['0.755', '0.848'] },
  { day: 15, readings: ['0.757', '0.853'] },
  { day: 29, readings: ['0.751', '0.846'] },
] as const;

/** What the meter read on the day after cooking. */
const MEASURED: readonly (readonly [filling: string, week: number, value: string])[] = [
  ['Dark ganache', 1, '0.884'],
  ['Raspberry ganache', 1, '0.861'],
  ['Salted caramel', 1, '0.748'],
  ['Smoked tea ganache', 2, '0.871'],
  ['Raspberry ganache', 3, '0.857'],
  ['Dark ganache', 4, '0.889'],
];

/** Water activity of fillings, by a meter that is held against salts. */
export const measureWater = async (
  { maker }: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  for (const { day, readings } of CALIBRATIONS) {
    calendar.at(day, 8, 30);
    const [sodium, potassium] = readings;
    await maker.post('/meters/calibrations', {
      instrument: METER,
      checks: [
        { salt: 'NaCl', tempC: '20.0', reading: sodium },
        { salt: 'KCl', tempC: '20.0', reading: potassium },
      ],
    });
  }
  for (const [filling, week, value] of MEASURED) {
    const cookedOn = week * 7 + 1;
    const itemId = data.items.get(filling);
    const lotCode = await lotMadeOn(maker, itemId, calendar.dayAfter(cookedOn, 0));
    if (lotCode === undefined) throw new Error(`demo: no "${filling}" of week ${String(week)}`);
    calendar.at(cookedOn + 1, 8, 40);
    const reading = { measure: 'water_activity', value, lotCode, instrument: METER };
    await maker.post('/readings', reading);
  }
};

/** A pan of praline that nobody needed yet waits in the freezer. */
export const keepFrozen = async (
  { maker }: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  const itemId = data.items.get('Pistachio and almond praline');
  const code = await lotMadeOn(maker, itemId, calendar.dayAfter(8, 0));
  if (code === undefined) throw new Error('demo: no pistachio praline to freeze');
  calendar.at(9, 9);
  await maker.post(`/lots/${code}/freezing`);
  calendar.at(38, 9);
  await maker.post(`/lots/${code}/thawing`);
};

/** Net weights of twelve boxes of a batch: an even spread about a mean. */
const packs = (meanG: string): string[] =>
  ['-1.1', '0.4', '0.9', '-0.6', '0.2', '1.3', '-0.3', '0.7', '-0.9', '0.1', '0.5', '-0.2'].map(
    (offset) => new Decimal(meanG).plus(offset).toFixed(1),
  );

const WEIGHED = [
  { box: 'Box of nine, assorted', nominalGrams: '80.000', mean: '82.4' },
  { box: 'Box of sixteen, assorted', nominalGrams: '144.000', mean: '147.8' },
] as const;

/** The boxes of the last week are weighed against what their labels will say. */
export const weighBoxes = async (
  { seller }: Team,
  data: MasterData,
  calendar: Calendar,
): Promise<void> => {
  const packedOn = 5 * 7 + 3;
  for (const { box, nominalGrams, mean } of WEIGHED) {
    const itemId = data.items.get(box);
    const code = await lotMadeOn(seller, itemId, calendar.dayAfter(packedOn, 0));
    if (code === undefined) throw new Error(`demo: no "${box}" to weigh`);
    calendar.at(packedOn, 15, 30);
    const netWeightsGrams = packs(mean);
    await seller.post(`/lots/${code}/quantity-checks`, {
      nominalGrams,
      batchSize: netWeightsGrams.length,
      destructive: false,
      netWeightsGrams,
    });
  }
};
