import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';

/** A calibration is trusted for a quarter (common practice, no source). */
const TRUSTED_DAYS = 92;
const DAY_MS = 86_400_000;

export interface ReadBy {
  readonly instrument: string | null;
  readonly at: Date;
}

/**
 * What a reading is worth: by the last calibration of its meter before it, when that one passed and
 * is no older than a quarter; null otherwise.
 */
export const loadUncertainties = async (
  tx: Tx,
  readings: readonly ReadBy[],
): Promise<(Decimal | null)[]> => {
  const instruments = [...new Set(readings.flatMap((row) => row.instrument ?? []))];
  const calibrations = await tx.meterCalibration.findMany({
    where: { instrument: { in: instruments } },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
  return readings.map(({ instrument, at }) => {
    const last = calibrations.find((row) => row.instrument === instrument && row.at <= at);
    const fresh = last && at.getTime() - last.at.getTime() <= TRUSTED_DAYS * DAY_MS;
    return last?.passed && fresh ? new Decimal(last.uncertainty.toString()) : null;
  });
};
