import { Injectable } from '@nestjs/common';
import { ZERO } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { endBatch, loadContents, type MadeLot, massOf } from '../batches';
import { nextCode } from '../codes';
import { additionsOf, checkAdditions, drawAll, heelOf } from './additions';
import { makeTankLot } from './make-tank-lot';
import type { ChargeDto } from './tanks.dto';
import type { ChargeView } from './tanks.view';
import { findTank, setCurrentLot, showTank, type TankRow } from './tanks.repository';

@Injectable()
export class ChargesService {
  constructor(private readonly transactions: Transactions) {}

  /**
   * Tops a tank up: a batch of its own, opened and finished in one booking. All that is left of the
   * tank's lot and the new lots go in; the tank's next lot comes out.
   */
  charge(tankId: string, dto: ChargeDto): Promise<ChargeView> {
    return this.transactions.book(async (tx, by) => {
      const tank = await findTank(tx, tankId);
      const heel = await heelOf(tx, tank);
      const additions = await additionsOf(tx, dto);
      checkAdditions(tank, heel, additions);
      const batch = await this.open(tx, by, tank);
      await drawAll(tx, by, batch.id, heel, additions);
      const contents = await loadContents(tx, batch.id);
      const made = await makeTankLot(tx, by, tank, batch, contents);
      await endBatch(tx, by, batch.id, { state: 'finished' });
      await setCurrentLot(tx, tankId, made.id);
      noteInJournal(by, {
        action: 'tank.charged',
        subjectKind: 'tank',
        subjectId: tank.name,
        detail: { batch: batch.code, lot: made.code, heel: heel?.code ?? null },
      });
      const heelG = heel?.onHand.massG ?? ZERO;
      return {
        batchId: batch.id,
        batchCode: batch.code,
        lotCode: made.code,
        heelGrams: quantityText(heelG),
        addedGrams: quantityText(massOf(contents).minus(heelG)),
        tank: await showTank(tx, tankId),
      };
    });
  }

  private async open(tx: Tx, by: By, tank: TankRow): Promise<MadeLot> {
    const batch = { id: newId(), code: await nextCode(tx, by, 'batch') };
    await tx.batch.create({
      data: {
        ...batch,
        kind: 'charge',
        tankId: tank.id,
        operatorId: by.userId,
        openedAt: by.at,
      },
      select: { id: true },
    });
    return batch;
  }
}
