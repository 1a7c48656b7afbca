import { Injectable } from '@nestjs/common';
import { decimalToDb, quantityText } from '../../platform/database/decimals';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { writeJournal } from '../../platform/journal/journal';
import { ZERO } from '../../domain/units';
import { loadLotForUseById } from '../stock';
import type { EmptyingDto, EmptyingView } from './tanks.dto';
import { findTank, setCurrentLot } from './tanks.repository';

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
      const left = heel?.onHand.quantity ?? ZERO;
      const id = newId();
      const outcome = left.isZero() ? 'nothing_left' : dto.outcome;
      const emptying = await tx.tankEmptying.create({
        data: {
          id,
          tankId,
          lotId: heel?.id ?? null,
          heelG: decimalToDb(heel?.onHand.massG ?? ZERO),
          outcome,
          cleaned: dto.cleaned,
          note: dto.note ?? null,
          at: by.at,
          userId: by.userId,
        },
      });
      if (heel !== null && outcome === 'wasted') {
        await tx.movement.create({
          data: {
            id: newId(),
            lotId: heel.id,
            quantity: decimalToDb(heel.onHand.quantity.negated()),
            massG: decimalToDb(heel.onHand.massG.negated()),
            cost: decimalToDb(heel.onHand.cost.negated()),
            kind: 'wasted',
            eventId: id,
            reason: `Tank ${tank.name} emptied`,
            at: by.at,
            userId: by.userId,
          },
          select: { id: true },
        });
      }
      if (tank.currentLotId !== null) await setCurrentLot(tx, tankId, null);
      await writeJournal(tx, by, {
        action: 'tank.emptied',
        subjectKind: 'tank',
        subjectId: tank.name,
        detail: { lot: heel?.code ?? null, outcome, cleaned: dto.cleaned },
      });
      return {
        id,
        lotCode: heel?.code ?? null,
        heelGrams: quantityText(emptying.heelG),
        outcome,
        cleaned: dto.cleaned,
        note: emptying.note,
        at: by.at.toISOString(),
      };
    });
  }
}
