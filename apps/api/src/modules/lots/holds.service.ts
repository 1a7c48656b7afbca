import { Injectable } from '@nestjs/common';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { loadLotForUse, placeHolds } from '../stock';
import type { LotView } from './lots.dto';
import { viewLot } from './lots.service';
import { say } from '../../domain/words/say';

@Injectable()
export class HoldsService {
  constructor(private readonly transactions: Transactions) {}

  place(code: string, reason: string): Promise<LotView> {
    return this.transactions.book(async (tx, by) => {
      const lot = await loadLotForUse(tx, code);
      await placeHolds(tx, by, [{ lotId: lot.id, kind: 'person', reason }]);
      noteInJournal(by, {
        action: 'hold.placed',
        subjectKind: 'lot',
        subjectId: code,
        detail: { reason },
      });
      return viewLot(tx, code, by.today);
    });
  }

  /** A hold for a missing specification goes only once the lot has one. */
  release(code: string, holdId: string, reason: string): Promise<LotView> {
    return this.transactions.book(async (tx, by) => {
      const lot = await loadLotForUse(tx, code);
      const found = await tx.hold.findFirst({
        where: { id: holdId, lotId: lot.id, releasedAt: null },
      });
      const hold = orNotFound(found, 'open hold', holdId);
      if (hold.kind === 'no_specification' && !lot.specified) {
        throw new RefusalError({
          code: 'lot-unspecified',
          detail: say`Lot ${code} (${lot.itemName}) still has no specification. Approve one of its supplier, pin it to the lot, then release the hold.`,
          facts: { lotCode: code },
        });
      }
      await tx.hold.update({
        where: { id: holdId },
        data: { releasedAt: by.at, releasedById: by.userId, releaseReason: reason },
        select: { id: true },
      });
      noteInJournal(by, {
        action: 'hold.released',
        subjectKind: 'lot',
        subjectId: code,
        detail: { held: hold.reason, kind: hold.kind, reason },
      });
      return viewLot(tx, code, by.today);
    });
  }
}
