import { Decimal } from '../../domain/units';
import type { Place } from '../../generated/prisma/client';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { placeHolds } from '../stock';
import type { TakeReadingDto } from './readings.dto';
import { named, say } from '../../domain/words/say';

interface Limits {
  readonly low: Decimal | null;
  readonly high: Decimal | null;
}

const NO_LIMITS: Limits = { low: null, high: null };
/** The limits that a place sets for a measure. */
export const limitsOf = (place: Place | null, measure: string): Limits => {
  if (place === null) return NO_LIMITS;
  if (measure === 'temp_c') {
    return {
      low: optionalDecimalFromDb(place.minTempC),
      high: optionalDecimalFromDb(place.maxTempC),
    };
  }
  if (measure !== 'humidity_percent') return NO_LIMITS;
  return { low: null, high: optionalDecimalFromDb(place.maxHumidityPercent) };
};

/** Lots of food that stand in the place now and aren't held already. */
export const holdLotsOf = async (
  tx: Tx,
  by: By,
  place: Place,
  reading: { readonly id: string; readonly dto: TakeReadingDto },
): Promise<void> => {
  const lots = await tx.lot.findMany({
    where: {
      placeId: place.id,
      onHandQuantity: { gt: 0 },
      item: { kind: { not: 'packaging' } },
      holds: { none: { releasedAt: null } },
    },
    select: { id: true, code: true },
  });
  const reason = say`${place.name}: ${named(reading.dto.measure)} was ${reading.dto.value}`;
  await placeHolds(
    tx,
    by,
    lots.map(({ id }) => ({
      lotId: id,
      kind: 'temperature' as const,
      reason,
      causeId: reading.id,
    })),
  );
  for (const { code } of lots) {
    noteInJournal(by, {
      action: 'hold.placed',
      subjectKind: 'lot',
      subjectId: code,
      detail: { reason },
    });
  }
};
