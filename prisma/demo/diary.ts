import { Decimal } from '../../apps/api/src/domain/units';
import type { Calendar, Team } from './demo-client';
import type { MasterData } from './master-data';

interface Watch {
  readonly place: string;
  readonly tempC: number;
  readonly humidityPercent?: number;
  /** Hours of the day on which somebody reads the dial. */
  readonly hours: readonly number[];
}

const WATCHES: readonly Watch[] = [
  { place: 'Dry store', tempC: 16.5, humidityPercent: 51, hours: [8] },
  { place: 'Fridge', tempC: 3.2, hours: [8, 18] },
  { place: 'Finished goods', tempC: 16, humidityPercent: 49, hours: [8] },
  { place: 'Workroom', tempC: 19.5, humidityPercent: 48, hours: [8] },
];

/** The door of the fridge stood ajar in the night before this day of the history. */
export const WARM_NIGHT = 23;

/** A dial that wanders a little, the same in every demo: within one unit of its middle. */
const wander = (day: number, place: number): number =>
  (((day * 7 + place * 5) % 11) - 5) * 0.1 + (((day * 3 + place) % 4) - 1.5) * 0.2;

const read = async (
  { maker }: Team,
  placeId: string | undefined,
  measure: string,
  value: Decimal,
  correctiveAction?: string,
): Promise<void> => {
  await maker.post('/readings', {
    placeId,
    measure,
    value: value.toFixed(1),
    instrument: 'Dial on the wall',
    ...(correctiveAction === undefined ? {} : { correctiveAction }),
  });
};

const DOOR =
  'Door had not closed on a crate. Crate moved, door closed, cream smelt and checked: 7 °C in the middle.';

/** One working day's rounds; the workshop is closed on the seventh day of its week. */
export const readDials = async (
  team: Team,
  data: MasterData,
  calendar: Calendar,
  day: number,
): Promise<void> => {
  if (day % 7 === 6) return;
  for (const hour of [8, 18]) {
    calendar.at(day, hour, 2);
    for (const [index, watch] of WATCHES.entries()) {
      if (!watch.hours.includes(hour)) continue;
      const placeId = data.places.get(watch.place);
      const drift = wander(day, index);
      const warm = day === WARM_NIGHT && hour === 8 && watch.place === 'Fridge';
      const tempC = new Decimal(warm ? 9.4 : watch.tempC + drift);
      await read(team, placeId, 'temp_c', tempC, warm ? DOOR : undefined);
      if (watch.humidityPercent === undefined) continue;
      await read(team, placeId, 'humidity_percent', new Decimal(watch.humidityPercent + drift * 3));
    }
  }
};
