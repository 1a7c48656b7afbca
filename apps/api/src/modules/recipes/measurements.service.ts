import { Injectable } from '@nestjs/common';
import { mixRecipe } from '../../domain/recipe';
import { Decimal } from '../../domain/units';
import { estimateWaterActivity, modelRecord } from '../../domain/water-activity';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound } from '../../platform/problems';
import { loadUncertainties } from '../meters';
import { loadReadingsOf, type ReadingOfVersion } from './measured.queries';
import type {
  EstimateAgainstMeasurementView,
  MeasurementView,
  OwnTableView,
} from './measurements.dto';
import { loadBook } from './recipe-book.queries';
import { contentOfVersion } from './recipe-content';
import { findVersion, findVersions, type StoredVersion } from './recipes.repository';
import { say } from '../../domain/words/say';

const TABLE_CAUTION = say`This workshop’s own figures: estimates from recipes as designed beside readings by calibrated meters. They say how far the model may be trusted here, and validate no shelf life.`;

/** What was measured of each recipe version, and how the model did against it. */
@Injectable()
export class MeasurementsService {
  constructor(private readonly transactions: Transactions) {}

  ofVersion(id: string): Promise<MeasurementView[]> {
    return this.transactions.read(async (tx) => {
      orNotFound(await findVersion(tx, id), 'recipe version', id);
      const readings = await loadReadingsOf(tx, [id]);
      const uncertainties = await loadUncertainties(tx, readings);
      return readings.map((row, index) => {
        const uncertainty =
          row.measure === 'water_activity' ? (uncertainties[index] ?? null) : null;
        return {
          readingId: row.id,
          measure: row.measure,
          value: new Decimal(row.value).toFixed(4),
          instrument: row.instrument,
          uncertainty: uncertainty?.toFixed(4) ?? null,
          usable: uncertainty !== null,
          lotCode: row.lotCode,
          batchCode: row.batchCode,
          at: row.at.toISOString(),
        };
      });
    });
  }

  ownTable(): Promise<OwnTableView> {
    return this.transactions.read(async (tx) => {
      const versions = await measuredVersions(tx);
      const readings = await loadReadingsOf(
        tx,
        versions.map((version) => version.id),
      );
      const activity = readings.filter((row) => row.measure === 'water_activity');
      const uncertainties = await loadUncertainties(tx, activity);
      const usable = activity.filter((_, index) => uncertainties[index] !== null);
      const rows: EstimateAgainstMeasurementView[] = [];
      for (const version of versions) {
        const estimate = await estimateOf(tx, version);
        const own = usable.filter((row) => row.versionId === version.id);
        if (estimate) rows.push(...own.map((row) => rowOf(version, estimate, row)));
      }
      const pairs = rows.map((row) => ({
        estimate: new Decimal(row.estimate),
        measured: new Decimal(row.measured),
      }));
      const record = modelRecord(pairs);
      return {
        rows,
        record: record && {
          pairs: record.pairs,
          bias: record.bias.toFixed(4),
          rootMeanSquare: record.rootMeanSquare.toFixed(4),
          largest: record.largest.toFixed(4),
        },
        caution: TABLE_CAUTION,
      };
    });
  }
}

const rowOf = (
  version: StoredVersion,
  estimate: Decimal,
  row: ReadingOfVersion,
): EstimateAgainstMeasurementView => ({
  recipeVersionId: version.id,
  itemName: version.recipe.item.name,
  number: version.number,
  estimate: estimate.toFixed(2),
  measured: new Decimal(row.value).toFixed(4),
  difference: estimate.minus(row.value).toFixed(4),
  lotCode: row.lotCode,
  at: row.at.toISOString(),
});

/** Two decimals, as the estimate is shown; null outside the model. */
const estimateOf = async (tx: Tx, version: StoredVersion): Promise<Decimal | null> => {
  const content = contentOfVersion(version);
  const mixed = mixRecipe(
    content,
    await loadBook(
      tx,
      content.lines.map((line) => line.itemId),
    ),
  );
  if (!mixed.ok) return null;
  const estimate = estimateWaterActivity(mixed.value.content);
  return estimate.status === 'estimated' ? estimate.value : null;
};

const measuredVersions = async (tx: Tx): Promise<StoredVersion[]> => {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT DISTINCT coalesce(lot.recipe_version_id, batch.recipe_version_id) AS id
    FROM reading
    LEFT JOIN lot ON lot.id = reading.lot_id
    LEFT JOIN batch ON batch.id = reading.batch_id
    WHERE reading.measure = 'water_activity'
      AND NOT EXISTS (SELECT 1 FROM reading_withdrawal WHERE reading_id = reading.id)
      AND coalesce(lot.recipe_version_id, batch.recipe_version_id) IS NOT NULL`;
  return findVersions(
    tx,
    rows.map(({ id }) => id),
  );
};
