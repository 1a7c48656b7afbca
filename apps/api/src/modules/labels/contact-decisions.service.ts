import { Injectable } from '@nestjs/common';
import type { ContactDecision } from '../../generated/prisma/client';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { RefusalError } from '../../platform/problems';
import { composeForLot } from './compose-for-lot';
import { namesOf, standingDecisions } from './contact-decisions.queries';
import { contactView } from './declarations.view';
import type { ContactDecisionView, DecideContactDto } from './contact-decisions.dto';
import { lotToLabel } from './lot-facts';
import { named, say } from '../../domain/words/say';

const view = (row: ContactDecision, decidedBy: string): ContactDecisionView => ({
  id: row.id,
  market: row.market,
  allergen: row.allergen,
  decision: row.decision,
  reason: row.reason,
  assessment: row.assessment as Record<string, unknown>,
  decidedBy,
  at: row.at.toISOString(),
});

/** Decisions about allergens that nobody meant to be inside: by whom, why, on which numbers. */
@Injectable()
export class ContactDecisionsService {
  constructor(private readonly transactions: Transactions) {}

  list(lotCode: string, market: string | undefined): Promise<ContactDecisionView[]> {
    return this.transactions.read(async (tx) => {
      const lot = await lotToLabel(tx, lotCode);
      const markets = market === undefined ? ['EU', 'GB', 'NI', 'US'] : [market];
      const rows = [];
      for (const code of markets) rows.push(...(await standingDecisions(tx, lot.itemId, code)));
      const names = await namesOf(tx, [...new Set(rows.map((row) => row.userId))]);
      return rows.map((row) => view(row, names.get(row.userId) ?? ''));
    });
  }

  /** Holds for the item until another decision; the numbers are judged anew for every label. */
  decide(lotCode: string, dto: DecideContactDto): Promise<ContactDecisionView> {
    return this.transactions.book(async (tx, by) => {
      const label = await composeForLot(tx, lotCode, by.today, { market: dto.market });
      const assessment = label.contacts.find((contact) => contact.allergen === dto.allergen);
      if (!assessment) {
        throw new RefusalError({
          code: 'contact-not-open',
          detail: say`Nothing says that ${named(dto.allergen)} may have got into lot ${lotCode}.`,
          facts: { lotCode, allergen: dto.allergen },
        });
      }
      if (dto.decision === 'leave_out' && assessment.verdict !== 'below') {
        throw new RefusalError({
          code: 'contact-not-open',
          detail: say`${named(dto.allergen)} can’t be left out: its amount isn’t known to be below the action level. State it, or have it measured.`,
          facts: { ...contactView(assessment) },
        });
      }
      const row = await tx.contactDecision.create({
        data: {
          id: newId(),
          itemId: label.lot.itemId,
          market: label.ask.market.code,
          allergen: dto.allergen,
          decision: dto.decision,
          reason: dto.reason,
          assessment: { ...contactView(assessment), lotCode },
          at: by.at,
          userId: by.userId,
        },
      });
      noteInJournal(by, {
        action: 'contact.decided',
        subjectKind: 'item',
        subjectId: label.lot.item.name,
        detail: { allergen: dto.allergen, decision: dto.decision, reason: dto.reason },
      });
      return view(row, by.userName);
    });
  }
}
