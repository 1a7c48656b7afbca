import type { SettledOutput } from '../../domain/making';
import { type DateKind, type LotDate, lotDate } from '../../domain/shelf-life';
import type { Prisma } from '../../generated/prisma/client';
import { optionalDayToDb } from '../../platform/database/days';
import { dayToDb } from '../../platform/database/days';
import { decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { nextCode } from '../codes';
import { type HoldToPlace, placeHolds } from '../stock';
import type { Content } from './contents.queries';
import { say } from '../../domain/words/say';

/** How long what a batch makes will keep, and on whose word. */
export interface LifeRule {
  readonly dateKind: DateKind;
  /** Null when nothing but the lots inside sets a date, as in a tank. */
  readonly shelfLifeDays: number | null;
  /** `Dark ganache v3, validated` */
  readonly lifeName: string;
}

export interface LotToMake {
  readonly itemId: string;
  readonly unit: string;
  readonly role: 'product' | 'rework';
  readonly recipeVersionId: string | null;
  readonly placeId: string | null;
  readonly made: SettledOutput;
}

export interface MadeLot {
  readonly id: string;
  readonly code: string;
}

/** Date of what is made today from these lots. Packaging has no part in it. */
export const dateOf = (by: By, contents: readonly Content[], rule: LifeRule): LotDate =>
  lotDate({
    madeOn: by.today,
    ...rule,
    draws: contents.filter(({ itemKind }) => itemKind !== 'packaging'),
  });

/** A hold on something inside is a hold on what is made from it. */
const inheritedHolds = (contents: readonly Content[]): string[] =>
  contents
    .filter(({ holds }) => holds.length > 0)
    .map(
      ({ lotCode, itemName, holds }) =>
        say`made with lot ${lotCode} (${itemName}), on hold: ${holds.join('; ')}`,
    );

export interface Making {
  readonly batchId: string;
  readonly contents: readonly Content[];
  readonly rule: LifeRule;
  /** Deviations that stand: each puts what is made on hold until a person decides. */
  readonly deviations: readonly { readonly readingId: string; readonly reason: string }[];
}

const columnsOf = (
  by: By,
  making: Making,
  date: LotDate,
  lot: LotToMake & MadeLot,
): Prisma.LotCreateManyInput => {
  const day = optionalDayToDb(date.day?.toString());
  return {
    id: lot.id,
    code: lot.code,
    itemId: lot.itemId,
    unit: lot.unit,
    recipeVersionId: lot.recipeVersionId,
    batchId: making.batchId,
    outputRole: lot.role,
    madeQuantity: decimalToDb(lot.made.quantity),
    madeMassG: decimalToDb(lot.made.massG),
    madeCost: decimalToDb(lot.made.cost),
    bestBefore: date.kind === 'best_before' ? day : null,
    useBy: date.kind === 'use_by' ? day : null,
    dateReasons: date.reasons as unknown as Prisma.InputJsonArray,
    madeOn: dayToDb(by.today.toString()),
    placeId: lot.placeId,
    createdAt: by.at,
    userId: by.userId,
  };
};

/** Makes the lots of a batch that is still open, dated and, where a deviation stands, on hold. */
export const makeLots = async (
  tx: Tx,
  by: By,
  making: Making,
  lots: readonly LotToMake[],
): Promise<MadeLot[]> => {
  const date = dateOf(by, making.contents, making.rule);
  const coded: (LotToMake & MadeLot)[] = [];
  for (const lot of lots) {
    coded.push({ ...lot, id: newId(), code: await nextCode(tx, by, 'lot') });
  }
  await tx.lot.createMany({ data: coded.map((lot) => columnsOf(by, making, date, lot)) });
  const inherited = inheritedHolds(making.contents);
  const holds = coded.flatMap(({ id }): HoldToPlace[] => [
    ...making.deviations.map(({ readingId, reason }) => ({
      lotId: id,
      kind: 'deviation' as const,
      reason,
      causeId: readingId,
    })),
    ...inherited.map((reason) => ({ lotId: id, kind: 'deviation' as const, reason })),
  ]);
  await placeHolds(tx, by, holds);
  return coded.map(({ id, code }) => ({ id, code }));
};
