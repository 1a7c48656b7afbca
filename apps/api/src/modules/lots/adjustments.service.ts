import { Injectable } from '@nestjs/common';
import { countDifference, removal, type StockShare } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { decimalFromDb, decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { loadLotForUse, type LotForUse } from '../stock';
import type { AdjustmentDto, LotView } from './lots.dto';
import { findMovement } from './lots.repository';
import { viewLot } from './lots.service';
import { say } from '../../domain/words/say';

const changeOf = async (tx: Tx, lot: LotForUse, dto: AdjustmentDto): Promise<StockShare | null> => {
  const quantity = new Decimal(dto.quantity);
  if (dto.kind !== 'counted') return orRefuse(removal(lot, quantity));
  const row = await tx.lot.findUniqueOrThrow({ where: { id: lot.id } });
  const made = {
    quantity: decimalFromDb(row.madeQuantity),
    massG: decimalFromDb(row.madeMassG),
  };
  return orRefuse(countDifference(lot, quantity, made));
};

const REVERSIBLE = new Set(['counted', 'wasted', 'sampled']);

@Injectable()
export class AdjustmentsService {
  constructor(private readonly transactions: Transactions) {}

  /** Books what was counted, thrown away or taken as a sample. Held lots may be adjusted too. */
  adjust(code: string, dto: AdjustmentDto): Promise<LotView> {
    return this.transactions.book(async (tx, by) => {
      const lot = await loadLotForUse(tx, code);
      const change = await changeOf(tx, lot, dto);
      if (change !== null) {
        await tx.movement.create({
          data: {
            id: newId(),
            lotId: lot.id,
            quantity: decimalToDb(change.quantity),
            massG: decimalToDb(change.massG),
            cost: decimalToDb(change.cost),
            kind: dto.kind,
            reason: dto.reason,
            at: by.at,
            userId: by.userId,
          },
          select: { id: true },
        });
      }
      noteInJournal(by, {
        action: `lot.${dto.kind}`,
        subjectKind: 'lot',
        subjectId: code,
        detail: {
          quantity: dto.quantity,
          change: change?.quantity.toFixed() ?? '0',
          reason: dto.reason,
        },
      });
      return viewLot(tx, code, by.today);
    });
  }

  /** Puts an adjustment right by its exact opposite. */
  reverse(code: string, movementId: string, reason: string): Promise<LotView> {
    return this.transactions.book(async (tx, by) => {
      const lot = await loadLotForUse(tx, code);
      const found = await findMovement(tx, movementId);
      const movement = orNotFound(found?.lotId === lot.id ? found : null, 'movement', movementId);
      if (!REVERSIBLE.has(movement.kind) || movement.reversesId !== null) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`Only a count, waste or sample is put right here. Correct a batch in the batch, and a dispatch by a return.`,
        });
      }
      if (movement.reversedBy !== null) {
        throw new RefusalError({
          code: 'already-exists',
          detail: say`This entry was put right already.`,
        });
      }
      await tx.movement.create({
        data: {
          id: newId(),
          lotId: lot.id,
          quantity: movement.quantity.negated(),
          massG: movement.massG.negated(),
          cost: movement.cost.negated(),
          kind: movement.kind,
          reversesId: movement.id,
          reason,
          at: by.at,
          userId: by.userId,
        },
        select: { id: true },
      });
      noteInJournal(by, {
        action: 'lot.adjustment-reversed',
        subjectKind: 'lot',
        subjectId: code,
        detail: { movement: movement.id, kind: movement.kind, reason },
      });
      return viewLot(tx, code, by.today);
    });
  }
}
