import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { epcisDocument, epcisEvent, type Naming, type TraceFact } from '../../domain/epcis';
import { Clock } from '../../platform/clock/clock';
import { csvLine } from '../../platform/csv/csv';
import { DatabaseService } from '../../platform/database/database.service';
import { RecallsService } from '../recalls';
import { factsOfRow } from './facts-of-rows';
import type { EventsQuery } from './exports.dto';
import { LOT_COLUMNS, lotRegister, type LotRegisterRow } from './lot-register.queries';
import { type FactRow, factsAfter } from './trace-facts.queries';
import { inEnglish } from '../../domain/words/say';

/** Rows of one page: the whole is never in memory. */
const PAGE = 500;
const BEFORE_ALL_IDS = '00000000-0000-0000-0000-000000000000';

@Injectable()
export class ExportsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly recalls: RecallsService,
    private readonly clock: Clock,
  ) {}

  /** The record as an EPCIS document, piece by piece as it is read. */
  async *events(query: EventsQuery, naming: Naming): AsyncGenerator<string> {
    const lots = query.recall === undefined ? undefined : await this.scopeOf(query.recall);
    const { head, tail } = epcisDocument(naming, this.clock.now().toISOString());
    yield head;
    let first = true;
    for await (const fact of this.facts(query)) {
      if (lots !== undefined && !touches(fact, lots)) continue;
      yield `${first ? '' : ','}${inEnglish(JSON.stringify(epcisEvent(naming, fact)))}`;
      first = false;
    }
    yield tail;
  }

  /** Every lot with its quantities, dates, place and origin, as a table to sort. */
  async *lots(): AsyncGenerator<string> {
    yield csvLine(LOT_COLUMNS);
    let after = '';
    for (;;) {
      const query = lotRegister(after, PAGE);
      const rows = await this.database.client.$queryRaw<LotRegisterRow[]>(query);
      for (const row of rows) yield csvLine(LOT_COLUMNS.map((column) => row[column]));
      const last = rows.at(-1);
      if (last === undefined || rows.length < PAGE) return;
      after = last.lot_code;
    }
  }

  /** Reads now what would only fail in the middle of an answer: an unknown case. */
  async check(query: EventsQuery): Promise<void> {
    if (query.recall !== undefined) await this.scopeOf(query.recall);
  }

  private async *facts(query: EventsQuery): AsyncGenerator<TraceFact> {
    const timeZone = await this.timeZone();
    const until = query.to === undefined ? this.clock.now() : dayAfter(query.to, timeZone);
    let after = {
      at: query.from === undefined ? new Date(0) : startOf(query.from, timeZone),
      id: BEFORE_ALL_IDS,
    };
    for (;;) {
      const rows = await this.database.client.$queryRaw<FactRow[]>(factsAfter(after, until, PAGE));
      for (const row of rows) yield* factsOfRow(row, timeZone);
      const last = rows.at(-1);
      if (last === undefined || rows.length < PAGE) return;
      after = { at: last.at, id: last.id };
    }
  }

  private async scopeOf(code: string): Promise<ReadonlySet<string>> {
    const recall = await this.recalls.get(code);
    return new Set(recall.scope.lots.map((lot) => lot.code));
  }

  private async timeZone(): Promise<string> {
    const workshop = await this.database.client.workshop.findUnique({ where: { id: 1 } });
    return workshop?.timeZone ?? 'UTC';
  }
}

const startOf = (day: string, timeZone: string): Date =>
  new Date(Temporal.PlainDate.from(day).toZonedDateTime(timeZone).epochMilliseconds);

const dayAfter = (day: string, timeZone: string): Date =>
  startOf(Temporal.PlainDate.from(day).add({ days: 1 }).toString(), timeZone);

const lotsIn = (fact: TraceFact): readonly string[] => {
  switch (fact.kind) {
    case 'made':
      return [...fact.inputs, ...fact.outputs].map((lot) => lot.lot);
    case 'packed':
      return [fact.box, ...fact.contents].map((lot) => lot.lot);
    default:
      return fact.lots.map((lot) => lot.lot);
  }
};

const touches = (fact: TraceFact, lots: ReadonlySet<string>): boolean =>
  lotsIn(fact).some((lot) => lots.has(lot));
