import { Injectable } from '@nestjs/common';
import { checkReturn } from '../../domain/dispatch';
import { Decimal } from '../../domain/units';
import { decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { placeHolds } from '../stock';
import type { RecallView, RecoveredDto, RecoveriesDto } from './recalls.dto';
import * as repository from './recalls.repository';
import { mustBe, RecallsService } from './recalls.service';
import { type PartBack, spread, stillOut } from './still-out';
import { say } from '../../domain/words/say';

@Injectable()
export class RecoveriesService {
  constructor(
    private readonly transactions: Transactions,
    private readonly recalls: RecallsService,
  ) {}

  /**
   * Books what came back or was destroyed where it was. Goods that came back go on hand again, under
   * the case's hold. A rehearsal keeps the figures and books nothing.
   */
  recover(code: string, dto: RecoveriesDto): Promise<RecallView> {
    return this.transactions.book(async (tx, by) => {
      const recall = await this.recalls.find(tx, code);
      mustBe(recall, ['frozen'], say`booking what was recovered`);
      const { scope, learned } = await this.recalls.view(tx, code);
      const inCase = new Set([...scope.lots, ...learned.lots].map((lot) => lot.code));
      for (const { lot } of dto.lines) mustBeInCase(code, lot, inCase);
      for (const line of dto.lines) await this.recoverLine(tx, by, recall, line);
      noteInJournal(by, {
        action: 'recall.recovered',
        subjectKind: 'recall',
        subjectId: code,
        detail: { lines: dto.lines.map((line) => ({ ...line })) },
      });
      return this.recalls.view(tx, code);
    });
  }

  private async recoverLine(
    tx: Tx,
    by: By,
    recall: repository.CaseWithActions,
    line: RecoveredDto,
  ): Promise<void> {
    const [found] = await repository.lotsByCode(tx, [line.lot]);
    const lot = orNotFound(found, 'lot', line.lot);
    const customerId = line.customerId ?? null;
    const out = await stillOut(tx, lot.id, customerId);
    const sent = out.reduce((total, one) => total.plus(one.share.quantity), new Decimal(0));
    const quantity = new Decimal(line.quantity);
    const destroyed = destroyedBefore(recall, line.lot, customerId);
    orRefuse(checkReturn(line.lot, sent.minus(destroyed), quantity));
    const parts = spread(out, quantity);
    const booked = recall.mode === 'real' && line.outcome === 'returned';
    if (booked) await this.bookBack(tx, by, { caseId: recall.id, code: recall.code, lot, parts });
    await repository.addAction(tx, by, recall.id, 'recovered', {
      lot: line.lot,
      customerId,
      quantity: decimalToDb(quantity),
      massGrams: parts
        .reduce((total, part) => total.plus(part.back.massG), new Decimal(0))
        .toFixed(3),
      outcome: line.outcome,
      booked,
    });
  }

  private async bookBack(
    tx: Tx,
    by: By,
    back: { caseId: string; code: string; lot: { id: string; code: string }; parts: PartBack[] },
  ): Promise<void> {
    const held = await repository.heldByCase(tx, back.caseId);
    if (!held.has(back.lot.id)) {
      const reason = say`Recall ${back.code}: goods that came back`;
      const hold = { lotId: back.lot.id, kind: 'recall', reason, causeId: back.caseId } as const;
      await placeHolds(tx, by, [hold]);
    }
    await tx.movement.createMany({
      data: back.parts.map((part) => ({
        id: newId(),
        lotId: back.lot.id,
        quantity: decimalToDb(part.back.quantity),
        massG: decimalToDb(part.back.massG),
        cost: decimalToDb(part.back.cost),
        kind: 'returned',
        dispatchLineId: part.lineId,
        eventId: back.caseId,
        reason: say`Recall ${back.code}`,
        at: by.at,
        userId: by.userId,
      })),
    });
  }
}

/** Goods of another lot come back as an ordinary return: counted here they would feign success. */
const mustBeInCase = (code: string, lot: string, inCase: ReadonlySet<string>): void => {
  if (inCase.has(lot)) return;
  throw new RefusalError({
    code: 'not-valid',
    detail: say`Lot ${lot} is not in recall ${code}. Book it as an ordinary return, or open a case for it.`,
  });
};

/** Recoveries that left no movement: destroyed where they were, or of a rehearsal. */
const destroyedBefore = (
  recall: repository.CaseWithActions,
  lot: string,
  customerId: string | null,
): Decimal =>
  recall.actions
    .filter((action) => action.kind === 'recovered')
    .map((action) => action.detail as Record<string, unknown>)
    .filter((row) => row['lot'] === lot && row['customerId'] === customerId && !row['booked'])
    .reduce((total, row) => total.plus(String(row['quantity'])), new Decimal(0));
