import { Temporal } from 'temporal-polyfill';
import { Decimal } from '../../domain/units';
import type { MeasuredWaterActivity } from '../../domain/water-activity';
import type { Tx } from '../../platform/database/prisma';
import { loadUncertainties } from '../meters';

export interface ReadingOfVersion {
  readonly id: string;
  readonly versionId: string;
  readonly measure: string;
  readonly value: string;
  readonly at: Date;
  readonly instrument: string | null;
  readonly lotCode: string | null;
  readonly batchCode: string | null;
}

/** Readings of what these versions made, of a lot or in a batch; those taken back are left out. */
export const loadReadingsOf = (
  tx: Tx,
  versionIds: readonly string[],
): Promise<ReadingOfVersion[]> =>
  tx.$queryRaw<ReadingOfVersion[]>`
    SELECT reading.id, coalesce(lot.recipe_version_id, batch.recipe_version_id) AS "versionId",
      reading.measure, reading.value::text AS value, reading.at, reading.instrument,
      lot.code AS "lotCode", batch.code AS "batchCode"
    FROM reading
    LEFT JOIN lot ON lot.id = reading.lot_id
    LEFT JOIN batch ON batch.id = reading.batch_id
    WHERE coalesce(lot.recipe_version_id, batch.recipe_version_id)
        = ANY(${[...versionIds]}::uuid[])
      AND reading.measure IN ('water_activity', 'ph', 'brix')
      AND reading.reverses_id IS NULL
      AND NOT EXISTS (SELECT 1 FROM reading AS later WHERE later.reverses_id = reading.id)
      AND NOT EXISTS (SELECT 1 FROM reading_withdrawal WHERE reading_id = reading.id)
    ORDER BY reading.at DESC, reading.id`;

export interface MeasuredOfVersion {
  readonly waterActivity: readonly MeasuredWaterActivity[];
  /** The latest; null when none was taken. */
  readonly ph: Decimal | null;
}

/** A reading that is no fraction of water's activity was mistyped; it is shown but never used. */
const isFraction = (value: string): boolean => {
  const number = new Decimal(value);
  return number.greaterThan(0) && number.lessThanOrEqualTo(1);
};

export const measuredFrom = async (
  tx: Tx,
  readings: readonly ReadingOfVersion[],
  timeZone: string,
): Promise<MeasuredOfVersion> => {
  const activity = readings.filter(
    (row) => row.measure === 'water_activity' && isFraction(row.value),
  );
  const uncertainties = await loadUncertainties(tx, activity);
  const ph = readings.find((row) => row.measure === 'ph');
  return {
    ph: ph ? new Decimal(ph.value) : null,
    waterActivity: activity.map((row, index) => ({
      value: new Decimal(row.value),
      measuredOn: Temporal.Instant.fromEpochMilliseconds(row.at.getTime())
        .toZonedDateTimeISO(timeZone)
        .toPlainDate(),
      uncertainty: uncertainties[index] ?? null,
      instrument: row.instrument ?? '',
    })),
  };
};
