import { recogniseScan } from '../../domain/identification';
import { mouldScope } from '../../domain/mould-scope';
import { tankScope, type TankEvent } from '../../domain/tank-scope';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, ProblemError } from '../../platform/problems';
import * as find from './roots.queries';
import { count, type Roots, utc, type Window } from './roots-kept';
import { rootsOfPlace } from './roots-of-place';
import { named, say, sentences } from '../../domain/words/say';

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
  const moment = await find.momentsOf(tx);
  const since = scope.soundAt === undefined ? say`its first use` : moment(scope.soundAt);
  const until = scope.soundAgainAt === undefined ? '' : say` until ${moment(scope.soundAgainAt)}`;
  return { ids, because: say`${count(ids)} cast in mould ${tag} since ${since}${until}` };
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
  const moment = await find.momentsOf(tx);
  const since = scope.since === undefined ? '' : say`; in its chain since ${moment(scope.since)}`;
  const when = say`from ${moment(window.from)} to ${moment(window.to)}`;
  return {
    ids: scope.tankLots,
    because: say`${count(scope.tankLots)} in tank ${tank.name} ${when}${since}`,
  };
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
      return { ids, because: say`${count(ids)} made by batch ${read.code}` };
    }
    case 'dispatch': {
      const ids = await find.sentWith(tx, read.code);
      return { ids, because: say`${count(ids)} sent with ${read.code}` };
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
      return { ids, because: say`${count(ids)} received under the supplier's lot ${lotCode}` };
    }
    default: {
      const ids = await find.byAnyCode(tx, text);
      if (ids.length > 0) return { ids, because: say`${count(ids)} under the code ${text}` };
      if ((await find.mouldWithHistory(tx, text.trim())) !== null)
        return rootsOfMould(tx, text.trim(), now);
      throw new ProblemError(
        'not-traceable',
        404,
        say`Nothing to trace`,
        say`Nothing here has the code "${text.slice(0, 60)}". Check it, or search for a smudged code.`,
      );
    }
  }
};

export const byLotCode = async (tx: Tx, code: string): Promise<Roots> => {
  const lot = orNotFound(await find.lotByCode(tx, code), 'lot', code);
  return { ids: [lot.id], because: say`lot ${code}` };
};

type Simple =
  'supplier' | 'delivery' | 'specification' | 'recipe-version' | 'item' | 'mould-design';

/** Starts that are one look-up by id. */
export const rootsById = async (tx: Tx, kind: Simple, id: string, at: string): Promise<Roots> => {
  if (kind === 'mould-design') {
    const tags = await find.mouldsOfDesign(tx, id);
    const each: Roots[] = [];
    for (const tag of tags) each.push(await rootsOfMould(tx, tag, at));
    const ids = [...new Set(each.flatMap((roots) => roots.ids))];
    return {
      ids,
      because: sentences(
        each.map((roots) => roots.because),
        '; ',
      ),
    };
  }
  const ids = await find.lotsOf(tx, kind, id);
  return { ids, because: say`${count(ids)} of the ${named(kind.replace('-', ' '))}` };
};
