import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { Role } from '../../platform/requests/request-context';
import { actionsFor, type Wanted } from './actions';
import type { ScannedLotView, ScanView } from './scan.dto';

export type ThingKind = Exclude<ScanView['kind'], 'lot' | 'goods' | 'item' | 'unknown'>;

const asListed = {
  item: true,
  place: true,
  holds: { where: { releasedAt: null }, select: { id: true } },
} as const satisfies Prisma.LotInclude;

const MOST_LOTS = 100;

/** Lots with something on hand, for the list under what was scanned. */
export const listedLots = async (
  tx: Tx,
  where: Prisma.LotWhereInput,
): Promise<ScannedLotView[]> => {
  const lots = await tx.lot.findMany({
    where,
    include: asListed,
    orderBy: { id: 'desc' },
    take: MOST_LOTS,
  });
  return lots.map((lot) => ({
    code: lot.code,
    itemName: lot.item.name,
    onHandQuantity: lot.onHandQuantity.toFixed(3),
    unit: lot.unit,
    placeName: lot.place?.name ?? null,
    onHold: lot.holds.length > 0,
  }));
};

interface Thing {
  readonly id: string;
  readonly title: string;
  readonly warning?: string | null;
  readonly wanted: readonly Wanted[];
  readonly lots?: Prisma.LotWhereInput;
}

const mould = async (tx: Tx, tag: string): Promise<Thing | undefined> => {
  const found = await tx.mould.findUnique({
    where: { tag },
    include: {
      design: true,
      uses: { where: { batch: { state: 'open' } }, include: { batch: true } },
    },
  });
  if (found === null) return undefined;
  const inBatch = found.uses[0]?.batch.code;
  const isSound = found.state === 'sound';
  const why = isSound ? null : `The mould is ${found.state}.`;
  return {
    id: found.id,
    title: `${found.design.name}, ${found.design.rows} × ${found.design.columns}`,
    warning: why,
    wanted: [
      ['open', null],
      ['use_mould', why ?? (inBatch === undefined ? null : `It is in batch ${inBatch}.`)],
      ['inspect', found.state === 'retired' ? 'The mould is retired.' : null],
      ['trace', null],
      ['recall', null],
      ['tag', null],
    ],
  };
};

const tank = async (tx: Tx, tag: string): Promise<Thing | undefined> => {
  const found = await tx.tank.findUnique({ where: { tag }, include: { item: true } });
  if (found === null) return undefined;
  const empty = found.currentLotId === null ? 'The tank is empty.' : null;
  return {
    id: found.id,
    title: `${found.name}, ${found.item.name}`,
    warning: found.active ? null : 'The tank is out of use.',
    wanted: [
      ['open', null],
      ['charge', found.active ? null : 'The tank is out of use.'],
      ['draw', empty],
      ['empty', empty],
      ['clean', null],
      ['trace', empty],
      ['tag', null],
    ],
    lots: { id: found.currentLotId ?? { in: [] } },
  };
};

const place = async (tx: Tx, tag: string): Promise<Thing | undefined> => {
  const found = await tx.place.findUnique({ where: { tag } });
  if (found === null) return undefined;
  return {
    id: found.id,
    title: found.name,
    warning: found.active ? null : 'The place is out of use.',
    wanted: [
      ['open', null],
      ['read', null],
      ['clean', null],
      ['trace', null],
      ['tag', null],
    ],
    lots: { placeId: found.id, onHandQuantity: { gt: 0 } },
  };
};

const batch = async (tx: Tx, code: string): Promise<Thing | undefined> => {
  const found = await tx.batch.findUnique({
    where: { code },
    include: { recipeVersion: { include: { recipe: { include: { item: true } } } }, tank: true },
  });
  if (found === null) return undefined;
  const why = found.state === 'open' ? null : `Batch ${code} is ${found.state}.`;
  return {
    id: found.id,
    title: found.recipeVersion?.recipe.item.name ?? found.tank?.name ?? code,
    warning: why,
    wanted: [
      ['open', null],
      ['draw', why],
      ['read', null],
      ...(found.kind === 'cast' ? [['use_mould', why] as const] : []),
      ['finish', why],
      ['sheet', null],
    ],
    lots: { batchId: found.id },
  };
};

const dispatch = async (tx: Tx, code: string): Promise<Thing | undefined> => {
  const found = await tx.dispatch.findUnique({
    where: { code },
    include: { customer: true, lines: { select: { lotId: true } } },
  });
  if (found === null) return undefined;
  return {
    id: found.id,
    title: found.customer?.name ?? 'Counter',
    wanted: [['open', null], ...(found.customer === null ? [] : [['note', null] as const])],
    lots: { id: { in: found.lines.map(({ lotId }) => lotId) } },
  };
};

const paper = (found: { id: string } | null, title: string | undefined): Thing | undefined =>
  found === null ? undefined : { id: found.id, title: title ?? '', wanted: [['open', null]] };

const complaint = async (tx: Tx, code: string): Promise<Thing | undefined> => {
  const found = await tx.complaint.findUnique({ where: { code } });
  return paper(found, found?.what.slice(0, 200));
};

const recall = async (tx: Tx, code: string): Promise<Thing | undefined> => {
  const found = await tx.recallCase.findUnique({ where: { code } });
  return paper(found, found?.reason.slice(0, 200));
};

const FINDERS: Readonly<Record<ThingKind, (tx: Tx, code: string) => Promise<Thing | undefined>>> = {
  mould,
  tank,
  place,
  batch,
  dispatch,
  complaint,
  recall,
};

/** A thing by its tag or code, with what can be done with it now; undefined when there is none. */
export const foundThing = async (
  tx: Tx,
  kind: ThingKind,
  code: string,
  role: Role,
): Promise<ScanView | undefined> => {
  const thing = await FINDERS[kind](tx, code);
  if (thing === undefined) return undefined;
  return {
    kind,
    code,
    id: thing.id,
    title: thing.title,
    warning: thing.warning ?? null,
    actions: actionsFor(thing.wanted, role),
    lots: thing.lots === undefined ? [] : await listedLots(tx, thing.lots),
    goodsIn: null,
  };
};
