import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';

export type HoldKind =
  | 'no_specification'
  | 'unknown_allergen'
  | 'temperature'
  | 'deviation'
  | 'mould'
  | 'recall'
  | 'person';

export interface HoldToPlace {
  readonly lotId: string;
  readonly kind: HoldKind;
  readonly reason: string;
  /** The reading, recall case or inspection that caused it. */
  readonly causeId?: string;
}

/** Puts lots on hold, in the transaction of whatever caused it. The caller writes the journal. */
export const placeHolds = async (tx: Tx, by: By, holds: readonly HoldToPlace[]): Promise<void> => {
  if (holds.length === 0) return;
  await tx.hold.createMany({
    data: holds.map((hold) => ({
      id: newId(),
      lotId: hold.lotId,
      kind: hold.kind,
      reason: hold.reason,
      causeId: hold.causeId ?? null,
      placedAt: by.at,
      placedById: by.userId,
    })),
  });
};
