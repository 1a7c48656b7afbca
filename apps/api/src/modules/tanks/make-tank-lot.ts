import { settleBatch } from '../../domain/making';
import { ZERO } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { orNotFound, orRefuse } from '../../platform/problems';
import { type Content, costOf, type LifeRule, type MadeLot, makeLots, massOf } from '../batches';
import type { TankRow } from './tanks.repository';
import { say } from '../../domain/words/say';

/** Nothing but the lots inside dates a tank's lot; a use-by among them stays a use-by. */
const lifeRule = (tank: TankRow, contents: readonly Content[]): LifeRule => ({
  dateKind: contents.some(({ useBy }) => useBy !== null) ? 'use_by' : 'best_before',
  shelfLifeDays: null,
  lifeName: say`Tank ${tank.name}`,
});

/** The tank's next lot: all that went in. */
export const makeTankLot = async (
  tx: Tx,
  by: By,
  tank: TankRow,
  batch: MadeLot,
  contents: readonly Content[],
): Promise<MadeLot> => {
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
};
