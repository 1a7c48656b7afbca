import { Injectable } from '@nestjs/common';
import { analyseRecipe } from '../../domain/recipe';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, orRefuse } from '../../platform/problems';
import { loadWorkshop } from '../workshop';
import type { AnalysisView } from './analysis.dto';
import { analysisView } from './analysis.view';
import { costOfRecipe } from './draft-cost';
import { loadReadingsOf, measuredFrom } from './measured.queries';
import { readDraft } from './read-draft';
import { loadBookWithRows } from './recipe-book.queries';
import { contentOfVersion } from './recipe-content';
import type { DraftAnalysisDto } from './recipes.dto';
import { findVersion } from './recipes.repository';

/** Analyses a recipe as designed, saved or not. Reads only. */
@Injectable()
export class AnalysisService {
  constructor(private readonly transactions: Transactions) {}

  ofVersion(id: string): Promise<AnalysisView> {
    return this.transactions.read(async (tx) => {
      const version = orNotFound(await findVersion(tx, id), 'recipe version', id);
      const content = contentOfVersion(version);
      const itemIds = content.lines.map((line) => line.itemId);
      const loaded = await loadBookWithRows(tx, itemIds);
      const { timeZone } = await loadWorkshop(tx);
      const measured = await measuredFrom(tx, await loadReadingsOf(tx, [id]), timeZone);
      const { waterActivity: readings, ph } = measured;
      const analysis = orRefuse(analyseRecipe({ content, book: loaded.book, readings, ph }));
      const { item } = version.recipe;
      const { labourRole } = version;
      const cost = await costOfRecipe(tx, this.day(), { ...item, labourRole }, content, loaded);
      return analysisView(analysis, content, cost);
    });
  }

  ofDraft(dto: DraftAnalysisDto): Promise<AnalysisView> {
    return this.transactions.read(async (tx) => {
      const { item, content, loaded } = await readDraft(tx, dto.itemId, dto.recipe);
      const { book } = loaded;
      const analysis = orRefuse(analyseRecipe({ content, book, readings: [], ph: null }));
      const labourRole = dto.recipe.labourRole ?? null;
      const cost = await costOfRecipe(tx, this.day(), { ...item, labourRole }, content, loaded);
      return analysisView(analysis, content, cost);
    });
  }

  private day(): string {
    return this.transactions.today().toString();
  }
}
