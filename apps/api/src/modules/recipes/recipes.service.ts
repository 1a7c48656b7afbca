import { Injectable } from '@nestjs/common';
import { acceptRecipe, compareVersions } from '../../domain/recipe';
import { DatabaseService } from '../../platform/database/database.service';
import { decimalToDb, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { readDraft } from './read-draft';
import { contentOfVersion } from './recipe-content';
import type { RecipeVersionDto } from './recipes.dto';
import * as repository from './recipes.repository';
import type { ComparisonView, RecipeVersionView } from './recipes.view';
import { versionView } from './version.view';
import { say } from '../../domain/words/say';

/** Writes versions of recipes. The first batch that uses one freezes it. */
@Injectable()
export class RecipesService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async versionsOf(itemId: string): Promise<RecipeVersionView[]> {
    const { client } = this.database;
    orNotFound(await client.item.findUnique({ where: { id: itemId } }), 'item', itemId);
    return (await repository.listVersions(client, itemId)).map(versionView);
  }

  async get(id: string): Promise<RecipeVersionView> {
    const found = await repository.findVersion(this.database.client, id);
    return versionView(orNotFound(found, 'recipe version', id));
  }

  create(itemId: string, dto: RecipeVersionDto): Promise<RecipeVersionView> {
    return this.transactions.book(async (tx, by) => {
      const yieldMassG = await this.accept(tx, itemId, dto);
      const version = await repository.createVersion(tx, itemId, dto, yieldMassG);
      return this.written(by, 'recipe.written', version);
    });
  }

  change(id: string, seen: number, dto: RecipeVersionDto): Promise<RecipeVersionView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findVersion(tx, id), 'recipe version', id);
      refuseIfStale('recipe version', seen, before.version);
      if (before.frozenAt !== null) {
        throw new RefusalError({
          code: 'recipe-version-frozen',
          detail: say`Version ${before.number} of ${before.recipe.item.name} has been used, so it never changes. Write a new version.`,
          facts: { number: before.number },
        });
      }
      const yieldMassG = await this.accept(tx, before.recipe.itemId, dto);
      const version = await repository.replaceVersion(tx, id, dto, yieldMassG);
      return this.written(by, 'recipe.changed', version);
    });
  }

  /** Two versions side by side, usually of one recipe. */
  async compare(beforeId: string, afterId: string): Promise<ComparisonView> {
    const { client } = this.database;
    const [found, other] = [
      await repository.findVersion(client, beforeId),
      await repository.findVersion(client, afterId),
    ];
    const before = orNotFound(found, 'recipe version', beforeId);
    const after = orNotFound(other, 'recipe version', afterId);
    const names = new Map(
      [...before.lines, ...after.lines].map((line) => [line.componentId, line.component.name]),
    );
    const compared = compareVersions(contentOfVersion(before), contentOfVersion(after));
    return {
      beforeNumber: before.number,
      afterNumber: after.number,
      lines: compared.lines.map((line) => ({
        itemId: line.itemId,
        itemName: names.get(line.itemId) ?? '',
        role: line.role,
        kind: line.kind,
        beforeQuantity: quantityText(line.before),
        afterQuantity: quantityText(line.after),
        beforePercent: line.beforePercent?.toFixed(2) ?? null,
        afterPercent: line.afterPercent?.toFixed(2) ?? null,
      })),
      fields: [...compared.fields],
    };
  }

  private async accept(tx: Tx, itemId: string, dto: RecipeVersionDto): Promise<string | null> {
    const { content, loaded } = await readDraft(tx, itemId, dto);
    const yieldG = orRefuse(acceptRecipe({ content, book: loaded.book, readings: [], ph: null }));
    return yieldG === null ? null : decimalToDb(yieldG);
  }

  private written(by: By, action: string, version: repository.StoredVersion): RecipeVersionView {
    noteInJournal(by, {
      action,
      subjectKind: 'recipe',
      subjectId: version.recipe.item.name,
      detail: { number: version.number },
    });
    return versionView(version);
  }
}
