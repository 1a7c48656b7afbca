import { Temporal } from 'temporal-polyfill';
import { checkTakeBack, settleBatch } from '../../domain/making';
import { type Decimal, sum } from '../../domain/units';
import { say } from '../../domain/words/say';
import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb } from '../../platform/database/days';
import { decimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { orNotFound, orRefuse } from '../../platform/problems';
import { placeHolds, type HoldKind } from '../stock';
import type { BatchHead } from './batch-head.queries';
import { loadContents, lostMass, massOf } from './contents.queries';
import { countOutputs, lotsOf } from './count-outputs';
import type { CorrectionDto } from './ending.dto';
import { makeLots, type MadeLot } from './make-lots';
import { loadMakingItem } from './making-item.queries';
import { loadDeviations } from './readings.queries';

const shown = {
  holds: { where: { releasedAt: null } },
  // What was reversed since does not stand in the way.
  movements: {
    where: { kind: { not: 'made' }, reversesId: null, reversedBy: null },
    select: { id: true },
    take: 1,
  },
} satisfies Prisma.LotInclude;

type Output = Prisma.LotGetPayload<{ include: typeof shown }>;

/** Σ mass of what a batch made, without what was taken back. */
export const madeMass = async (tx: Tx, batchId: string): Promise<Decimal> => {
  const standing = await tx.lot.findMany({
    where: { batchId, takenBackAt: null },
    select: { madeMassG: true },
  });
  return sum(standing.map(({ madeMassG }) => decimalFromDb(madeMassG)));
};

/** The lots that are named; nothing rests on them, and something takes their place. */
const wrongOutputs = async (tx: Tx, head: BatchHead, dto: CorrectionDto): Promise<Output[]> => {
  const all = await tx.lot.findMany({
    where: { batchId: head.id },
    include: shown,
    orderBy: { code: 'asc' },
  });
  const wrong = [...new Set(dto.reversedOutputIds ?? [])].map((id) =>
    orNotFound(
      all.find((lot) => lot.id === id),
      'lot of batch',
      id,
    ),
  );
  const standing = wrong.map((lot) => ({
    code: lot.code,
    used: lot.movements.length > 0,
    takenBack: lot.takenBackAt !== null,
  }));
  orRefuse(checkTakeBack(standing, dto.outputs?.length ?? 0));
  return wrong;
};

/** What a person put on hold stays so under its new code; deviations are judged anew. */
const carryHolds = async (
  tx: Tx,
  by: By,
  wrong: readonly Output[],
  made: readonly MadeLot[],
): Promise<void> => {
  const holds = wrong.flatMap((lot) =>
    lot.holds
      .filter(({ kind }) => kind !== 'deviation')
      .map((hold) => ({ ...hold, reason: say`as lot ${lot.code}: ${hold.reason}` })),
  );
  const carried = made.flatMap(({ id }) =>
    holds.map(({ kind, reason, causeId }) => ({
      lotId: id,
      kind: kind as HoldKind,
      reason,
      ...(causeId === null ? {} : { causeId }),
    })),
  );
  await placeHolds(tx, by, carried);
};

/**
 * Takes lots back that never came out as they were counted, each by the opposite of the movement
 * that made it, and makes what did come out: from the same contents, of the same day, with the cost
 * of what they replace.
 * @returns codes of the lots that are made
 */
export const correctOutputs = async (
  tx: Tx,
  by: By,
  head: BatchHead,
  dto: CorrectionDto,
): Promise<string[]> => {
  const wrong = await wrongOutputs(tx, head, dto);
  const [first] = wrong;
  if (first === undefined) return [];
  const { item, rule } = await loadMakingItem(tx, head);
  for (const { id } of wrong) {
    await tx.lot.update({
      where: { id },
      data: { takenBackAt: by.at, takenBackById: by.userId, takenBackReason: dto.reason },
      select: { id: true },
    });
  }
  const contents = await loadContents(tx, head.id);
  const outputs = dto.outputs ?? [];
  const counted = await countOutputs(tx, item, { outputs });
  const { imbalanceReason } = await tx.batch.findUniqueOrThrow({ where: { id: head.id } });
  const settled = orRefuse(
    settleBatch(counted.outputs, {
      batchCode: head.code,
      drawnG: massOf(contents),
      drawnCost: sum(wrong.map(({ madeCost }) => decimalFromDb(madeCost))),
      lostG: (await lostMass(tx, head.id)).plus(await madeMass(tx, head.id)),
      imbalanceReason,
    }),
  );
  const deviations = await loadDeviations(tx, head);
  const madeOn = Temporal.PlainDate.from(dayFromDb(first.madeOn));
  const lots = lotsOf(counted, settled, head.recipeVersionId).map((lot) => ({
    ...lot,
    placeId: lot.placeId ?? first.placeId,
  }));
  const making = { batchId: head.id, contents, rule, deviations };
  const made = await makeLots(tx, { ...by, today: madeOn }, making, lots);
  await carryHolds(tx, by, wrong, made);
  return made.map(({ code }) => code);
};
