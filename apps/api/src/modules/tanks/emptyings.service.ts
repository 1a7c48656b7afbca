import { Injectable } from '@nestjs/common';
import { decimalToDb, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import type { StockShare } from '../../domain/stock';
import { ZERO } from '../../domain/units';
import { loadLotForUseById, type LotForUse } from '../stock';
import type { EmptyingDto } from './tanks.dto';
import type { EmptyingView } from './tanks.view';
import { findTank, setCurrentLot } from './tanks.repository';
import { say } from '../../domain/words/say';

const NOTHING: StockShare = { quantity: ZERO, massG: ZERO, cost: ZERO };

/** Throws all that is left of a tank's lot away. */
const wasteHeel = async (
  tx: Tx,
  by: By,
  heel: LotForUse,
  emptyingId: string,
  tankName: string,
): Promise<void> => {
  await tx.movement.create({
    data: {
      id: newId(),
      lotId: heel.id,
      quantity: decimalToDb(heel.onHand.quantity.negated()),
      massG: decimalToDb(heel.onHand.massG.negated()),
      cost: decimalToDb(heel.onHand.cost.negated()),
      kind: 'wasted',
      eventId: emptyingId,
      reason: say`Tank ${tankName} emptied`,
      at: by.at,
      userId: by.userId,
    },
    select: { id: true },
  });
};

@Injectable()
export class EmptyingsService {
  constructor(private readonly transactions: Transactions) {}

  /**
   * Empties a tank: its heel is thrown away, or stays in stock as the lot that it is. Held and
   * expired heels can be emptied too. Only a cleaning ends the chain of what may be in the tank.
   */
  empty(tankId: string, dto: EmptyingDto): Promise<EmptyingView> {
    return this.transactions.book(async (tx, by) => {
      const tank = await findTank(tx, tankId);
      const heel =
        tank.currentLotId === null ? null : await loadLotForUseById(tx, tank.currentLotId);
      const left = heel?.onHand ?? NOTHING;
      const heelCode = heel?.code ?? null;
      const id = newId();
      const outcome = left.quantity.isZero() ? 'nothing_left' : dto.outcome;
      const emptying = await tx.tankEmptying.create({
        data: {
          id,
          tankId,
          lotId: tank.currentLotId,
          heelG: decimalToDb(left.massG),
          outcome,
          cleaned: dto.cleaned,
          note: dto.note ?? null,
          at: by.at,
          userId: by.userId,
        },
      });
      if (heel !== null && outcome === 'wasted') await wasteHeel(tx, by, heel, id, tank.name);
      if (tank.currentLotId !== null) await setCurrentLot(tx, tankId, null);
      noteInJournal(by, {
        action: 'tank.emptied',
        subjectKind: 'tank',
        subjectId: tank.name,
        detail: { lot: heelCode, outcome, cleaned: dto.cleaned },
      });
      return {
        id,
        lotCode: heelCode,
        heelGrams: quantityText(emptying.heelG),
        outcome,
        cleaned: dto.cleaned,
        note: emptying.note,
        at: by.at.toISOString(),
      };
    });
  }
}
