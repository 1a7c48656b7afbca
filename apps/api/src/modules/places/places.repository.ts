import type { Prisma, Place } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { PlaceView } from './places.dto';

const degrees = (value: Prisma.Decimal | null): string | null => value?.toFixed(2) ?? null;

export const placeView = (place: Place): PlaceView => ({
  id: place.id,
  name: place.name,
  kind: place.kind,
  tag: place.tag,
  minTempC: degrees(place.minTempC),
  maxTempC: degrees(place.maxTempC),
  maxHumidityPercent: degrees(place.maxHumidityPercent),
  readingEveryHours: place.readingEveryHours,
  active: place.active,
  version: place.version,
});

export const findPlace = (tx: Tx, id: string): Promise<Place | null> =>
  tx.place.findUnique({ where: { id } });

/** Names in alphabetical order, from the one after `after`. */
export const listPlaces = (tx: Tx, limit: number, after: string | undefined): Promise<Place[]> =>
  tx.place.findMany({
    where: after === undefined ? {} : { name: { gt: after } },
    orderBy: { name: 'asc' },
    take: limit + 1,
  });

export const createPlace = (
  tx: Tx,
  data: Omit<Prisma.PlaceUncheckedCreateInput, 'id'>,
): Promise<Place> => tx.place.create({ data: { id: newId(), ...data } });

export const changePlace = (
  tx: Tx,
  id: string,
  data: Prisma.PlaceUncheckedUpdateInput,
): Promise<Place> =>
  tx.place.update({ where: { id }, data: { ...data, version: { increment: 1 } } });
