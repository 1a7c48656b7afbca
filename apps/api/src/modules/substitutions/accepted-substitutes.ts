import { Injectable } from '@nestjs/common';
import { checkAcceptance } from '../../domain/making';
import { Decimal } from '../../domain/units';
import { say } from '../../domain/words/say';
import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orRefuse, RefusalError } from '../../platform/problems';
import { type ForeignLotDraw, Substitutes } from '../batches';
import { loadBatchToCompare } from './batch-to-compare.queries';
import { compareLot } from './compare-lot';
import { differencesOf } from './substitutions.view';

/** Asks for the acceptance of what another lot changes, against a comparison made at this moment. */
@Injectable()
export class AcceptedSubstitutes extends Substitutes {
  override async requireAccepted(tx: Tx, by: By, draw: ForeignLotDraw): Promise<void> {
    const { head, lot, acceptance, reason } = draw;
    const batch = await loadBatchToCompare(tx, head.id);
    const insteadOf = acceptance?.insteadOfItemId ?? null;
    const quantity = new Decimal(draw.quantity);
    const compared = await compareLot(tx, { batch, lot, insteadOf, quantity });
    const worse = compared.allergens.filter(({ isWorse }) => isWorse);
    // The batch's own product, worked in again, brings nothing new unless something stood in there.
    if (batch.product.id === lot.itemId && worse.length === 0) return;
    const differences = differencesOf(compared, lot);
    const foreign = {
      batchCode: head.code,
      lotCode: lot.code,
      itemName: lot.itemName,
      tankName: batch.tankName,
      insteadOf: compared.original?.name ?? null,
      worse: worse.map(({ allergen, after }) => ({ allergen, after })),
    };
    orRefuse(checkAcceptance(foreign, acceptance, differences));
    if (reason === null) throw reasonMissing(lot.itemName);
    noteInJournal(by, {
      action: 'batch.substitute-accepted',
      subjectKind: 'batch',
      subjectId: head.code,
      detail: {
        lot: lot.code,
        item: lot.itemName,
        insteadOf: foreign.insteadOf,
        quantity: draw.quantity,
        role: draw.role,
        reason,
        ...(differences as unknown as Prisma.InputJsonObject),
      },
    });
  }
}

const reasonMissing = (itemName: string): RefusalError =>
  new RefusalError({
    code: 'not-valid',
    detail: say`Say why ${itemName} goes in, which the recipe doesn’t name.`,
  });
