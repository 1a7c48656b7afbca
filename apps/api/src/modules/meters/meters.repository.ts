import { judgeCalibration, type ReferenceSalt, type SaltCheck } from '../../domain/water-activity';
import { Decimal } from '../../domain/units';
import type { MeterCalibration } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import type { CalibrateDto, CalibrationView, SaltCheckDto } from './meters.dto';

const checksOf = (rows: readonly SaltCheckDto[]): SaltCheck[] =>
  rows.map((row) => ({
    salt: row.salt as ReferenceSalt,
    tempC: new Decimal(row.tempC),
    read: new Decimal(row.reading),
  }));

export const calibrationView = (stored: MeterCalibration): CalibrationView => {
  const rows = stored.checks as unknown as SaltCheckDto[];
  const verdict = judgeCalibration(checksOf(rows));
  return {
    id: stored.id,
    instrument: stored.instrument,
    checks: rows.map((row, index) => ({
      ...row,
      expected: verdict.deviations[index]?.expected.toFixed(4) ?? '',
      deviation: verdict.deviations[index]?.deviation.toFixed(4) ?? '',
    })),
    passed: stored.passed,
    uncertainty: stored.uncertainty.toFixed(4),
    advice: verdict.advice,
    note: stored.note,
    at: stored.at.toISOString(),
  };
};

export const createCalibration = (tx: Tx, by: By, dto: CalibrateDto): Promise<MeterCalibration> => {
  const verdict = judgeCalibration(checksOf(dto.checks));
  return tx.meterCalibration.create({
    data: {
      id: newId(),
      instrument: dto.instrument,
      checks: dto.checks.map(({ salt, tempC, reading }) => ({ salt, tempC, reading })),
      passed: verdict.passed,
      uncertainty: Decimal.min(1, verdict.uncertainty).toFixed(4),
      note: dto.note ?? null,
      at: by.at,
      userId: by.userId,
    },
  });
};

/** Newest first; `before` is the instant and id of the last row of the page before. */
export const listCalibrations = (
  tx: Tx,
  limit: number,
  instrument: string | undefined,
  before: readonly string[] | undefined,
): Promise<MeterCalibration[]> => {
  const [at, id] = before ?? [];
  return tx.meterCalibration.findMany({
    where: {
      ...(instrument === undefined ? {} : { instrument }),
      ...(at === undefined || id === undefined
        ? {}
        : { OR: [{ at: { lt: new Date(at) } }, { at: new Date(at), id: { lt: id } }] }),
    },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: limit + 1,
  });
};
