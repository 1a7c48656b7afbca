import { Injectable } from '@nestjs/common';
import { checkCharge, settleBatch } from '../../domain/making';
import { Decimal, ZERO } from '../../domain/units';
import { decimalFromDb, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { writeJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import {
  bookDraw,
  type Content,
  costOf,
  endBatch,
  type LifeRule,
  loadContents,
  type MadeLot,
  makeLots,
  massOf,
} from '../batches';
import { nextCode } from '../codes';
import { loadLotForUseById, loadLotsForUse, type LotForUse, takeFromLot } from '../stock';
import type { ChargeDto, ChargeView } from './tanks.dto';
import { findTank, setCurrentLot, showTank, type TankRow } from './tanks.repository';

interface Addition {
  readonly lot: LotForUse;
  readonly quantity: Decimal;
  readonly rework: boolean;
}

const additionsOf = async (tx: Tx, dto: ChargeDto): Promise<Addition[]> => {
  const lots = await loadLotsForUse(
    tx,
    dto.lots.map(({ lotCode }) => lotCode),
  );
  return dto.lots.map(({ lotCode, quantity, rework }) => ({
    lot: orNotFound(lots.get(lotCode), 'lot', lotCode),
    quantity: new Decimal(quantity),
    rework: rework === true,
  }));
};

/** Nothing but the lots inside dates a tank's lot; a use-by among them stays a use-by. */
const lifeRule = (tank: TankRow, contents: readonly Content[]): LifeRule => ({
  dateKind: contents.some(({ useBy }) => useBy !== null) ? 'use_by' : 'best_before',
  shelfLifeDays: null,
  lifeName: `Tank ${tank.name}`,
});

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
      const heel = await this.heelOf(tx, tank);
      const additions = await additionsOf(tx, dto);
      this.check(tank, heel, additions);
      const batch = await this.open(tx, by, tank);
      await this.drawAll(tx, by, batch.id, heel, additions);
      const contents = await loadContents(tx, batch.id);
      const made = await this.make(tx, by, tank, batch, contents);
      await endBatch(tx, by, batch.id, { state: 'finished' });
      await setCurrentLot(tx, tankId, made.id);
      await writeJournal(tx, by, {
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

  /** The tank's lot, when something is left of it. */
  private async heelOf(tx: Tx, tank: TankRow): Promise<LotForUse | null> {
    if (tank.currentLotId === null) return null;
    const lot = await loadLotForUseById(tx, tank.currentLotId);
    return lot.onHand.quantity.isZero() ? null : lot;
  }

  private check(tank: TankRow, heel: LotForUse | null, additions: readonly Addition[]): void {
    const own = additions.find(({ lot }) => lot.id === tank.currentLotId);
    if (!tank.active || own !== undefined) {
      throw new RefusalError({
        code: 'not-valid',
        detail: tank.active
          ? `Lot ${own?.lot.code ?? ''} is in tank ${tank.name} already; its rest goes in as the heel.`
          : `Tank ${tank.name} is out of use. Put it back into use first.`,
      });
    }
    orRefuse(
      checkCharge(
        {
          name: tank.name,
          itemId: tank.itemId,
          itemName: tank.item.name,
          capacityG: decimalFromDb(tank.capacityG),
          heelG: heel?.onHand.massG ?? null,
        },
        additions.map(({ lot, quantity, rework }) => ({
          lotCode: lot.code,
          itemId: lot.itemId,
          itemName: lot.itemName,
          massG: lot.unit === 'g' ? quantity : lot.onHand.massG,
          rework,
        })),
      ),
    );
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

  private async drawAll(
    tx: Tx,
    by: By,
    batchId: string,
    heel: LotForUse | null,
    additions: readonly Addition[],
  ): Promise<void> {
    if (heel !== null) {
      const share = takeFromLot(heel, heel.onHand.quantity, by.today);
      await bookDraw(tx, by, { batchId, lotId: heel.id, role: 'heel', share, reason: null });
    }
    const left = new Map<string, LotForUse>();
    for (const { lot, quantity, rework } of additions) {
      const now = left.get(lot.id) ?? lot;
      const share = takeFromLot(now, quantity, by.today);
      const role = rework ? 'rework' : 'charge';
      await bookDraw(tx, by, { batchId, lotId: lot.id, role, share, reason: null });
      left.set(lot.id, {
        ...now,
        onHand: {
          quantity: now.onHand.quantity.minus(share.quantity),
          massG: now.onHand.massG.minus(share.massG),
          cost: now.onHand.cost.minus(share.cost),
        },
      });
    }
  }

  private async make(
    tx: Tx,
    by: By,
    tank: TankRow,
    batch: MadeLot,
    contents: readonly Content[],
  ): Promise<MadeLot> {
    const massG = massOf(contents);
    const output = {
      itemName: tank.item.name,
      unit: 'g' as const,
      quantity: massG,
      weighedG: null,
      nominalMassG: null,
      lost: false,
    };
    const [made] = orRefuse(
      settleBatch([output], {
        batchCode: batch.code,
        drawnG: massG,
        drawnCost: costOf(contents),
        lostG: ZERO,
        imbalanceReason: null,
      }),
    );
    const making = {
      batchId: batch.id,
      contents,
      rule: lifeRule(tank, contents),
      deviations: [],
    };
    const [lot] = await makeLots(tx, by, making, [
      {
        itemId: tank.itemId,
        unit: 'g',
        role: 'product',
        recipeVersionId: null,
        placeId: null,
        made: orNotFound(made, 'output of batch', batch.code),
      },
    ]);
    return orNotFound(lot, 'lot of batch', batch.code);
  }
}
