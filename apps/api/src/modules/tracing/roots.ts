import { Temporal } from 'temporal-polyfill';
import { recogniseScan } from '../../domain/identification';
import { mouldScope } from '../../domain/mould-scope';
import { tankScope, type TankEvent } from '../../domain/tank-scope';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, ProblemError } from '../../platform/problems';
import * as find from './roots.queries';

/** The lots that a trace starts from, and in words how they were found. */
export interface Roots {
  readonly ids: readonly string[];
  readonly because: string;
}

export interface Window {
  readonly from: string;
  readonly to: string;
}

const utc = (instant: string): string => Temporal.Instant.from(instant).toString();

const count = (ids: readonly string[]): string =>
  ids.length === 1 ? '1 lot' : `${String(ids.length)} lots`;

/** Everything in the mould since it was last found sound, up to when it was found sound again. */
export const rootsOfMould = async (tx: Tx, tag: string, at: string): Promise<Roots> => {
  const mould = orNotFound(await find.mouldWithHistory(tx, tag), 'mould', tag);
  const scope = mouldScope(
    mould.inspections.map((row) => ({ at: row.at.toISOString(), verdict: find.verdictOf(row) })),
    mould.uses.map((row) => ({ at: row.at.toISOString(), batch: row.batchId })),
    utc(at),
  );
  const ids = await find.madeByBatches(
    tx,
    scope.uses.map((use) => use.batch),
  );
  const since = scope.soundAt === undefined ? 'its first use' : scope.soundAt;
  const until = scope.soundAgainAt === undefined ? '' : ` until ${scope.soundAgainAt}`;
  return { ids, because: `${count(ids)} cast in mould ${tag} since ${since}${until}` };
};

/** The lots that stood in a tank during a window; heels carry the trace to what was behind them. */
export const rootsOfTank = async (tx: Tx, id: string, window: Window): Promise<Roots> => {
  const tank = orNotFound(await find.tankWithHistory(tx, id), 'tank', id);
  const events: TankEvent[] = [
    ...tank.batches.flatMap((batch): TankEvent[] =>
      batch.outputs.map((output) => ({
        kind: 'charged',
        at: (batch.endedAt ?? batch.openedAt).toISOString(),
        addedLots: batch.draws.map((draw) => draw.lotId),
        tankLot: output.id,
      })),
    ),
    ...tank.emptyings.map((row): TankEvent => ({
      kind: 'emptied',
      at: row.at.toISOString(),
      clean: row.cleaned,
    })),
  ];
  const scope = tankScope(events, utc(window.from), utc(window.to));
  const since = scope.since === undefined ? '' : `; in its chain since ${scope.since}`;
  return {
    ids: scope.tankLots,
    because: `${count(scope.tankLots)} in tank ${tank.name} from ${window.from} to ${window.to}${since}`,
  };
};

/** What was kept in a place at any moment of a window. */
export const rootsOfPlace = async (tx: Tx, id: string, window: Window): Promise<Roots> => {
  const place = orNotFound(await find.placeById(tx, id), 'place', id);
  const ids = await find.keptInPlace(tx, id, window.from, window.to);
  return {
    ids,
    because: `${count(ids)} kept in ${place.name} from ${window.from} to ${window.to}`,
  };
};

/**
 * What a reading puts in doubt: its lot, its batch's lots, its delivery line's lot; for a place all
 * that was kept there between the last reading before it and the next after it that were in limits.
 */
export const rootsOfReading = async (tx: Tx, id: string, now: string): Promise<Roots> => {
  const reading = orNotFound(await find.readingById(tx, id), 'reading', id);
  const what = `${reading.measure} ${reading.value.toString()} (${reading.verdict})`;
  const because = (of: string): string => `${of}: reading ${what} at ${reading.at.toISOString()}`;
  if (reading.lotId !== null) return { ids: [reading.lotId], because: because('its lot') };
  if (reading.batchId !== null) {
    const ids = await find.madeByBatches(tx, [reading.batchId]);
    return { ids, because: because(`${count(ids)} of its batch`) };
  }
  if (reading.deliveryLineId !== null) {
    const ids = await find.lotsOfDeliveryLine(tx, reading.deliveryLineId);
    return { ids, because: because('its delivery') };
  }
  const { placeId, measure, at } = reading;
  const around = await find.soundReadingsAround(tx, { placeId: placeId ?? '', measure, at }, now);
  const roots = await rootsOfPlace(tx, placeId ?? '', around);
  return { ids: roots.ids, because: `${because('its place')}; ${roots.because}` };
};

/** Whatever a person scanned or typed: a lot, batch, mould, tank, dispatch or a supplier's carton. */
export const rootsOfText = async (tx: Tx, text: string, now: string): Promise<Roots> => {
  const read = recogniseScan(text, await find.scanContext(tx, now));
  switch (read.kind) {
    case 'lot':
      return byLotCode(tx, read.code);
    case 'box':
      return byLotCode(tx, read.lotCode);
    case 'batch': {
      const ids = await find.madeByBatchCode(tx, read.code);
      return { ids, because: `${count(ids)} made by batch ${read.code}` };
    }
    case 'dispatch': {
      const ids = await find.sentWith(tx, read.code);
      return { ids, because: `${count(ids)} sent with ${read.code}` };
    }
    case 'mould':
      return rootsOfMould(tx, read.code, now);
    case 'tank': {
      const tank = orNotFound(await find.tankByTag(tx, read.code), 'tank', read.code);
      return rootsOfTank(tx, tank.id, { from: now, to: now });
    }
    case 'place': {
      const place = orNotFound(await find.placeByTag(tx, read.code), 'place', read.code);
      return rootsOfPlace(tx, place.id, { from: now, to: now });
    }
    case 'supplier': {
      const { lotCode = '' } = read.facts;
      const ids = await find.bySupplierLotCode(tx, lotCode);
      return { ids, because: `${count(ids)} received under the supplier's lot ${lotCode}` };
    }
    default: {
      const ids = await find.byAnyCode(tx, text);
      if (ids.length > 0) return { ids, because: `${count(ids)} under the code ${text}` };
      throw new ProblemError(
        'not-traceable',
        404,
        'Nothing to trace',
        `Nothing here has the code "${text.slice(0, 60)}". Check it, or search for a smudged code.`,
      );
    }
  }
};

export const byLotCode = async (tx: Tx, code: string): Promise<Roots> => {
  const lot = orNotFound(await find.lotByCode(tx, code), 'lot', code);
  return { ids: [lot.id], because: `lot ${code}` };
};

type Simple =
  'supplier' | 'delivery' | 'specification' | 'recipe-version' | 'item' | 'mould-design';

/** Starts that are one look-up by id. */
export const rootsById = async (tx: Tx, kind: Simple, id: string, now: string): Promise<Roots> => {
  if (kind === 'mould-design') {
    const tags = await find.mouldsOfDesign(tx, id);
    const each: Roots[] = [];
    for (const tag of tags) each.push(await rootsOfMould(tx, tag, now));
    const ids = [...new Set(each.flatMap((roots) => roots.ids))];
    return { ids, because: each.map((roots) => roots.because).join('; ') };
  }
  const ids = await find.lotsOf(tx, kind, id);
  return { ids, because: `${count(ids)} of the ${kind.replace('-', ' ')}` };
};
