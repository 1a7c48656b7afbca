import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { Wanted } from './actions';
import { named, say } from '../../domain/words/say';

/** Something found by its tag or code: what it is, and what could be done with it. */
export interface Thing {
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
      uses: { where: { batch: { state: 'open' }, withdrawal: null }, include: { batch: true } },
    },
  });
  if (found === null) return undefined;
  const inBatch = found.uses[0]?.batch.code;
  const isSound = found.state === 'sound';
  const why = isSound ? null : say`The mould is ${named(found.state)}.`;
  return {
    id: found.id,
    title: `${found.design.name}, ${found.design.rows} × ${found.design.columns}`,
    warning: why,
    wanted: [
      ['open', null],
      ['use_mould', why ?? (inBatch === undefined ? null : say`It is in batch ${inBatch}.`)],
      ['inspect', found.state === 'retired' ? say`The mould is retired.` : null],
      ['trace', null],
      ['recall', null],
      ['tag', null],
    ],
  };
};

const tank = async (tx: Tx, tag: string): Promise<Thing | undefined> => {
  const found = await tx.tank.findUnique({ where: { tag }, include: { item: true } });
  if (found === null) return undefined;
  const empty = found.currentLotId === null ? say`The tank is empty.` : null;
  return {
    id: found.id,
    title: `${found.name}, ${found.item.name}`,
    warning: found.active ? null : say`The tank is out of use.`,
    wanted: [
      ['open', null],
      ['charge', found.active ? null : say`The tank is out of use.`],
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
    warning: found.active ? null : say`The place is out of use.`,
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
  const why = found.state === 'open' ? null : say`Batch ${code} is ${named(found.state)}.`;
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
    title: found.customer?.name ?? say`Counter`,
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

export type Finder = (tx: Tx, code: string) => Promise<Thing | undefined>;

export const byKind = { mould, tank, place, batch, dispatch, complaint, recall } satisfies Record<
  string,
  Finder
>;
