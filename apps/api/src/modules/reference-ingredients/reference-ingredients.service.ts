import { Injectable } from '@nestjs/common';
import { REFERENCE_CAUTION, REFERENCE_INGREDIENTS } from '../../domain/reference-ingredients';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { withGenericComposition } from '../recipes';
import type { GenericChoiceView, ReferenceIngredientsView } from './reference-ingredients.dto';
import { say } from '../../domain/words/say';

/** Generic compositions for trying a recipe out before a supplier's specification has come in. */
@Injectable()
export class ReferenceIngredientsService {
  constructor(private readonly transactions: Transactions) {}

  list(): ReferenceIngredientsView {
    return {
      items: REFERENCE_INGREDIENTS.map((row) => ({
        key: row.key,
        nameEn: row.names.en,
        nameFr: row.names.fr,
        composition: JSON.parse(JSON.stringify(row.composition)) as Record<string, unknown>,
        source: row.source,
        derived: row.derived,
        note: row.note,
        statedGrams: row.statedGrams.toFixed(2),
        flagged: row.flagged,
      })),
      caution: REFERENCE_CAUTION,
    };
  }

  choose(itemId: string, seen: number, key: string | null): Promise<GenericChoiceView> {
    return this.transactions.book(async (tx, by) => {
      const found = await tx.item.findUnique({ where: { id: itemId } });
      const item = orNotFound(found, 'item', itemId);
      refuseIfStale('item', seen, item.version);
      if (item.kind !== 'ingredient') {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`${item.name} is not an ingredient: what it is made of follows from its recipe.`,
        });
      }
      if (key !== null) {
        orNotFound(
          REFERENCE_INGREDIENTS.find((row) => row.key === key),
          'generic row',
          key,
        );
      }
      const settings = withGenericComposition(item.settings, key);
      await tx.item.update({
        where: { id: itemId },
        data: { settings, version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'item.generic-composition-chosen',
        subjectKind: 'item',
        subjectId: item.name,
        detail: { key },
      });
      return { itemId, key, caution: REFERENCE_CAUTION };
    });
  }
}
