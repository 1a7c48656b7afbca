import type { Prisma } from '../../generated/prisma/client';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { MouldDesignView } from './mould-designs.dto';

const included = { moulds: { select: { state: true } } } satisfies Prisma.MouldDesignInclude;
type Design = Prisma.MouldDesignGetPayload<{ include: typeof included }>;

export const mouldDesignView = (design: Design): MouldDesignView => ({
  id: design.id,
  name: design.name,
  shape: design.shape,
  rows: design.rows,
  columns: design.columns,
  cavities: design.rows * design.columns,
  cavityVolumeMl: design.cavityVolumeMl?.toFixed(4) ?? null,
  pieceMassGrams: design.pieceMassG === null ? null : quantityText(design.pieceMassG),
  geometry: design.geometry as Record<string, unknown>,
  soundMoulds: design.moulds.filter(({ state }) => state === 'sound').length,
  keptMoulds: design.moulds.filter(({ state }) => state !== 'retired').length,
  version: design.version,
});

export const findMouldDesign = (tx: Tx, id: string): Promise<Design | null> =>
  tx.mouldDesign.findUnique({ where: { id }, include: included });

/** Names in alphabetical order, from the one after `after`. */
export const listMouldDesigns = (
  tx: Tx,
  limit: number,
  after: string | undefined,
): Promise<Design[]> =>
  tx.mouldDesign.findMany({
    where: after === undefined ? {} : { name: { gt: after } },
    include: included,
    orderBy: { name: 'asc' },
    take: limit + 1,
  });

export const createMouldDesign = (
  tx: Tx,
  data: Omit<Prisma.MouldDesignUncheckedCreateInput, 'id'>,
): Promise<Design> => tx.mouldDesign.create({ data: { id: newId(), ...data }, include: included });

export const changeMouldDesign = (
  tx: Tx,
  id: string,
  data: Prisma.MouldDesignUncheckedUpdateInput,
): Promise<Design> =>
  tx.mouldDesign.update({
    where: { id },
    data: { ...data, version: { increment: 1 } },
    include: included,
  });
