import type { DateKind } from '../../domain/shelf-life';
import type { Decimal } from '../../domain/units';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, RefusalError } from '../../platform/problems';
import type { BatchHead } from './batch-head.queries';
import type { LifeRule } from './make-lots';
import { say } from '../../domain/words/say';

/** What comes out of a batch. */
export interface MakingItem {
  readonly id: string;
  readonly name: string;
  readonly unit: 'g' | 'pc';
  readonly nominalMassG: Decimal | null;
}

export interface ToMake {
  readonly item: MakingItem;
  readonly rule: LifeRule;
}

/** The item that a batch makes, and the life that its recipe version gives it. */
export const loadMakingItem = async (tx: Tx, head: BatchHead): Promise<ToMake> => {
  if (head.recipeVersionId === null) {
    throw new RefusalError({
      code: 'batch-kind-unfit',
      detail: say`Batch ${head.code} charged a tank; it is finished with the charge itself.`,
    });
  }
  const found = await tx.recipeVersion.findUnique({
    where: { id: head.recipeVersionId },
    include: { recipe: { include: { item: true } } },
  });
  const version = orNotFound(found, 'recipe version', head.recipeVersionId);
  const { item } = version.recipe;
  const basis = version.shelfLifeBasis === null ? '' : `, ${version.shelfLifeBasis}`;
  return {
    item: {
      id: item.id,
      name: item.name,
      unit: item.unit === 'pc' ? 'pc' : 'g',
      nominalMassG: optionalDecimalFromDb(item.nominalMassG),
    },
    rule: {
      dateKind: version.dateKind as DateKind,
      shelfLifeDays: version.shelfLifeDays,
      lifeName: `${item.name} v${String(version.number)}${basis}`,
    },
  };
};
