import { checkCharge } from '../../domain/making';
import { Decimal } from '../../domain/units';
import { decimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { bookDraw } from '../batches';
import { loadLotForUseById, loadLotsForUse, type LotForUse, takeFromLot } from '../stock';
import type { ChargeDto } from './tanks.dto';
import type { TankRow } from './tanks.repository';
import { say } from '../../domain/words/say';

/** What is put into a tank beside its heel. */
export interface Addition {
  readonly lot: LotForUse;
  readonly quantity: Decimal;
  readonly rework: boolean;
}

export const additionsOf = async (tx: Tx, dto: ChargeDto): Promise<Addition[]> => {
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

/** The tank's lot, when something is left of it. */
export const heelOf = async (tx: Tx, tank: TankRow): Promise<LotForUse | null> => {
  if (tank.currentLotId === null) return null;
  const lot = await loadLotForUseById(tx, tank.currentLotId);
  return lot.onHand.quantity.isZero() ? null : lot;
};

export const checkAdditions = (
  tank: TankRow,
  heel: LotForUse | null,
  additions: readonly Addition[],
): void => {
  const own = additions.find(({ lot }) => lot.id === tank.currentLotId);
  if (!tank.active || own !== undefined) {
    throw new RefusalError({
      code: 'not-valid',
      detail: tank.active
        ? say`Lot ${own?.lot.code ?? ''} is in tank ${tank.name} already; its rest goes in as the heel.`
        : say`Tank ${tank.name} is out of use. Put it back into use first.`,
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
};

export const drawAll = async (
  tx: Tx,
  by: By,
  batchId: string,
  heel: LotForUse | null,
  additions: readonly Addition[],
): Promise<void> => {
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
};
