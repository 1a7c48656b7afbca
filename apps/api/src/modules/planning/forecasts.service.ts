import { Injectable } from '@nestjs/common';
import { forecastCounter, type CounterSale, type Forecast } from '../../domain/demand';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { withKey } from '../pricing';
import { loadWorkshop } from '../workshop';
import { planningSettings, seasonsOf } from './planning-settings';
import type {
  ForecastQuery,
  ForecastView,
  PlanningSettingsDto,
  PlanningSettingsView,
} from './planning-settings.dto';
import { say } from '../../domain/words/say';

/** Sales that a forecast looks back at: a year and a half, so that last year's season is in. */
const HISTORY_DAYS = 550;

interface SaleRow {
  readonly day: string;
  readonly quantity: string;
}

/**
 * What the counter sold of an item on each day since its first sale on which it sold anything at
 * all: a day on which the counter sold other things only is a day with nothing sold of this.
 */
export const counterSales = async (
  tx: Tx,
  itemId: string,
  today: string,
): Promise<CounterSale[]> => {
  const rows = await tx.$queryRaw<SaleRow[]>`
    WITH own AS (
      SELECT dispatch.sent_on AS day, sum(-movement.quantity) AS quantity
      FROM dispatch JOIN dispatch_line line ON line.dispatch_id = dispatch.id
        JOIN movement ON movement.dispatch_line_id = line.id JOIN lot ON lot.id = line.lot_id
      WHERE dispatch.customer_id IS NULL AND lot.item_id = ${itemId}::uuid
        AND dispatch.sent_on < ${today}::date
        AND dispatch.sent_on >= ${today}::date - ${HISTORY_DAYS}::int
      GROUP BY dispatch.sent_on)
    SELECT open.day::text, coalesce(own.quantity, 0)::text AS quantity
    FROM (SELECT DISTINCT sent_on AS day FROM dispatch
      WHERE customer_id IS NULL AND sent_on < ${today}::date
        AND sent_on >= (SELECT min(day) FROM own)) open
      LEFT JOIN own ON own.day = open.day
    ORDER BY open.day`;
  return rows.map(({ day, quantity }) => ({ day, quantity: new Decimal(quantity) }));
};

export const forecastOf = async (
  tx: Tx,
  itemId: string,
  settings: PlanningSettingsDto,
  today: string,
  fromDay: string,
  days: number,
): Promise<Forecast> =>
  forecastCounter(
    {
      sales: await counterSales(tx, itemId, today),
      seasons: seasonsOf(settings),
      openWeekdays: settings.counterWeekdays,
    },
    fromDay,
    days,
  );

const USUAL_DAYS = 14;

@Injectable()
export class ForecastsService {
  constructor(private readonly transactions: Transactions) {}

  settings(): Promise<PlanningSettingsView> {
    return this.transactions.inTransaction(async (tx) => planningSettings(await loadWorkshop(tx)));
  }

  changeSettings(seen: number, dto: PlanningSettingsDto): Promise<PlanningSettingsView> {
    if (dto.seasons.some((season) => season.toDay < season.fromDay || +season.factor === 0)) {
      throw new RefusalError({
        code: 'not-valid',
        detail: say`A season ends on or after the day it begins, and its factor is above nought.`,
      });
    }
    return this.transactions.book(async (tx, by) => {
      const before = await loadWorkshop(tx);
      refuseIfStale('workshop', seen, before.version);
      const after = await tx.workshop.update({
        where: { id: 1 },
        data: { settings: withKey(before.settings, 'planning', dto), version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'planning-settings.changed',
        subjectKind: 'workshop',
        subjectId: after.name,
        detail: withKey({}, 'planning', dto),
      });
      return planningSettings(after);
    });
  }

  forecast(itemId: string, query: ForecastQuery): Promise<ForecastView> {
    return this.transactions.read(async (tx) => {
      orNotFound(await tx.item.findUnique({ where: { id: itemId } }), 'item', itemId);
      const today = this.transactions.today().toString();
      const settings = planningSettings(await loadWorkshop(tx));
      const from = query.fromDay ?? today;
      const days = query.days ?? USUAL_DAYS;
      const forecast = await forecastOf(tx, itemId, settings, today, from, days);
      return {
        level: forecast.level.toFixed(2),
        observedDays: forecast.observedDays,
        thin: forecast.thin,
        days: forecast.days.map(({ day, expected, season }) => ({
          day,
          expected: expected.toFixed(2),
          season: season ?? null,
        })),
        method: 'ratio_to_mean',
      };
    });
  }
}
