import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import { count, type Roots, type Window } from './roots-kept';
import * as find from './roots.queries';
import * as kept from './roots-of-place.queries';
import { named, say, sentences, type Sentence } from '../../domain/words/say';

/** What was kept in a place at any moment of a window. */
export const rootsOfPlace = async (tx: Tx, id: string, window: Window): Promise<Roots> => {
  const place = orNotFound(await find.placeById(tx, id), 'place', id);
  const { ids, withoutPlace } = await kept.keptInPlace(tx, id, window.from, window.to);
  const moment = await find.momentsOf(tx);
  const when = say`from ${moment(window.from)} to ${moment(window.to)}`;
  const unknown =
    withoutPlace === 0
      ? ''
      : say`; of ${withoutPlace} more nobody recorded where they stood: they are not in it`;
  return { ids, because: say`${count(ids)} kept in ${place.name} ${when}${unknown}` };
};

/**
 * What a reading puts in doubt: its lot, its batch's lots, its delivery line's lot; for a place all
 * that was kept there between the last reading before it and the next after it that were in limits.
 */
export const rootsOfReading = async (tx: Tx, id: string, now: string): Promise<Roots> => {
  const reading = orNotFound(await kept.readingById(tx, id), 'reading', id);
  const moment = await find.momentsOf(tx);
  const what = say`${named(reading.measure)} ${reading.value.toString()} (${named(reading.verdict)})`;
  const because = (of: Sentence): Sentence =>
    say`${of}: reading ${what} at ${moment(reading.at.toISOString())}`;
  if (reading.lotId !== null) return { ids: [reading.lotId], because: because(say`its lot`) };
  if (reading.batchId !== null) {
    const ids = await find.madeByBatches(tx, [reading.batchId]);
    return { ids, because: because(say`${count(ids)} of its batch`) };
  }
  if (reading.deliveryLineId !== null) {
    const ids = await find.lotsOfDeliveryLine(tx, reading.deliveryLineId);
    return { ids, because: because(say`its delivery`) };
  }
  const { placeId, measure, at } = reading;
  const around = await kept.soundReadingsAround(tx, { placeId: placeId ?? '', measure, at }, now);
  const roots = await rootsOfPlace(tx, placeId ?? '', around);
  return { ids: roots.ids, because: sentences([because(say`its place`), roots.because], '; ') };
};
