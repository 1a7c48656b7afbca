import {
  standingDeviations,
  stepChecks,
  type StepCheck,
  type TakenReading,
  type Verdict,
} from '../../domain/making';
import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { BatchHead } from './batch-head.queries';
import { say } from '../../domain/words/say';

export interface Deviation {
  readonly readingId: string;
  readonly reason: string;
}

/** The check points of the recipe version that a batch follows. */
export const loadChecks = async (tx: Tx, head: BatchHead): Promise<StepCheck[]> => {
  if (head.recipeVersionId === null) return [];
  const version = await tx.recipeVersion.findUnique({
    where: { id: head.recipeVersionId },
    select: { steps: true },
  });
  return stepChecks(version?.steps ?? []);
};

type StoredReading = Prisma.ReadingGetPayload<{ include: { withdrawal: true } }>;

/** A stored reading as the domain judges it. */
export const takenReading = (row: StoredReading): StoredReading & TakenReading => ({
  ...row,
  verdict: row.verdict as Verdict,
  withdrawn: row.withdrawal !== null,
});

/** Readings outside their limits that no later reading put right, in words for a hold. */
export const loadDeviations = async (tx: Tx, head: BatchHead): Promise<Deviation[]> => {
  const rows = await tx.reading.findMany({
    where: { batchId: head.id },
    include: { withdrawal: true },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  });
  return standingDeviations(rows.map(takenReading)).map((reading) => ({
    readingId: reading.id,
    reason: deviationInWords(head.code, reading),
  }));
};

interface OutOfLimits {
  readonly measure: string;
  readonly value: { toFixed(): string };
  readonly low: { toFixed(): string } | null;
  readonly high: { toFixed(): string } | null;
  readonly step: string | null;
  readonly verdict: Verdict;
}

export const deviationInWords = (batchCode: string, reading: OutOfLimits): string => {
  const limit =
    reading.verdict === 'low'
      ? say`${reading.low?.toFixed() ?? ''} at least`
      : say`${reading.high?.toFixed() ?? ''} at most`;
  const where = reading.step === null ? '' : ` at “${reading.step}”`;
  return `batch ${batchCode}: ${reading.measure}${where} was ${reading.value.toFixed()}, ${limit}`;
};
