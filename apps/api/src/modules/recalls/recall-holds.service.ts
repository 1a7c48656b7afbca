import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { placeHolds } from '../stock';
import { currentScope, withoutExcluded } from './recall-scope';
import type { RecallView } from './recalls.dto';
import * as repository from './recalls.repository';
import { mustBe, RecallsService } from './recalls.service';
import { frozenScopeOf, rootIdsOf } from './recalls.view';
import type { ScopeView } from './scope.dto';
import { say } from '../../domain/words/say';

@Injectable()
export class RecallHoldsService {
  constructor(
    private readonly transactions: Transactions,
    private readonly recalls: RecallsService,
  ) {}

  /** Puts every lot in scope on hold in one step, those learned of later too. Rehearsals hold none. */
  hold(code: string): Promise<RecallView> {
    return this.transactions.book(async (tx, by) => {
      const recall = await this.recalls.find(tx, code);
      mustBe(recall, ['open', 'frozen'], say`holding its lots`);
      const lots = await lotsToHold(tx, recall, by);
      if (recall.mode === 'real') {
        await placeHolds(
          tx,
          by,
          lots.map((lot) => ({
            lotId: lot.id,
            kind: 'recall',
            reason: say`Recall ${code}: ${recall.reason}`,
            causeId: recall.id,
          })),
        );
      }
      const detail = { lots: lots.map((lot) => lot.code), rehearsal: recall.mode === 'rehearsal' };
      await repository.addAction(tx, by, recall.id, 'held', detail);
      noteInJournal(by, {
        action: 'recall.held',
        subjectKind: 'recall',
        subjectId: code,
        detail,
      });
      return this.recalls.view(tx, code);
    });
  }
}

const scopeCodes = (scope: ScopeView | null): string[] => scope?.lots.map((lot) => lot.code) ?? [];

/** Lots of the scope as frozen and as it is now that this case doesn't hold yet. */
const lotsToHold = async (tx: Tx, recall: repository.CaseWithActions, by: By) => {
  const excluded = frozenScopeOf(recall)?.excluded ?? [];
  const now = withoutExcluded(await currentScope(tx, rootIdsOf(recall), by.at), excluded);
  const codes = new Set(scopeCodes(now));
  for (const code of scopeCodes(frozenScopeOf(recall))) codes.add(code);
  const lots = await repository.lotsByCode(tx, [...codes]);
  const held = await repository.heldByCase(tx, recall.id);
  return lots.filter((lot) => !held.has(lot.id));
};
