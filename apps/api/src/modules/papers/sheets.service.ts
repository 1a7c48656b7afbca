import { Injectable } from '@nestjs/common';
import { batchSheet, deliveryNote } from '../../documents';
import { dayFromDb, optionalDayFromDb } from '../../platform/database/days';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, RefusalError } from '../../platform/problems';
import { showBatch } from '../batches';
import { batchSheetView } from './batch-sheet.view';
import { knownAllergens } from './known-allergens';
import { allergenNames } from './lot-tags.repository';
import { PaperContexts } from './paper-context';
import type { PaperQuery } from './papers.dto';
import { say } from '../../domain/words/say';

/** Papers of A4 or Letter size that go with a batch or a dispatch. */
@Injectable()
export class SheetsService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
  ) {}

  batch(id: string, query: PaperQuery): Promise<Buffer> {
    return this.transactions.read(async (tx) => {
      const context = await this.contexts.of(tx, query);
      const batch = await showBatch(tx, id, this.transactions.today().toString());
      const codes = batch.lines.flatMap(({ proposedLots }) => proposedLots.map((l) => l.lotCode));
      const lots = await tx.lot.findMany({
        where: { code: { in: [...codes, ...batch.draws.map(({ lotCode }) => lotCode)] } },
        include: { item: { select: { kind: true } } },
      });
      const { market } = await tx.workshop.findUniqueOrThrow({ where: { id: 1 } });
      const food = lots.filter(({ item }) => item.kind !== 'packaging').map((lot) => lot.id);
      const allergens = await knownAllergens(tx, food, market);
      const version = await tx.recipeVersion.findFirst({ where: { batches: { some: { id } } } });
      const place =
        batch.placeId === null ? null : await tx.place.findUnique({ where: { id: batch.placeId } });
      const view = batchSheetView(batch, {
        steps: version?.steps ?? [],
        placeName: place?.name ?? null,
        useByLots: new Set(lots.filter(({ useBy }) => useBy !== null).map(({ code }) => code)),
        allergenNames: allergenNames(allergens.contains, context.language),
        allergensUnknown: allergens.unknown,
      });
      return batchSheet(view, context);
    });
  }

  deliveryNote(id: string, query: PaperQuery): Promise<Buffer> {
    return this.transactions.read(async (tx) => {
      const context = await this.contexts.of(tx, query);
      const found = await tx.dispatch.findUnique({
        where: { id },
        include: {
          customer: true,
          lines: { include: { lot: { include: { item: true } } }, orderBy: { position: 'asc' } },
        },
      });
      const dispatch = orNotFound(found, 'dispatch', id);
      if (dispatch.customer === null) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`${dispatch.code} was sold over the counter; a delivery note is for a customer.`,
        });
      }
      const { customer, lines } = dispatch;
      return deliveryNote(
        {
          code: dispatch.code,
          sentOn: dayFromDb(dispatch.sentOn),
          customer: { name: customer.name, addressLines: customer.addressLines },
          note: dispatch.note,
          lines: lines.map(({ lot, quantity, massG }) => ({
            itemName: lot.item.name,
            lotCode: lot.code,
            quantity: quantity.toFixed(3),
            unit: lot.unit === 'pc' ? 'pc' : 'g',
            massG: massG.toFixed(3),
            date: optionalDayFromDb(lot.useBy ?? lot.bestBefore),
            dateKind: lot.useBy === null ? 'best_before' : 'use_by',
            storageConditions: lot.item.storageConditions,
          })),
        },
        context,
      );
    });
  }
}
