import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { InspectionView, MouldDetailView, MouldView } from './moulds.dto';

const included = {
  design: true,
  inspections: { orderBy: { at: 'desc' } },
  uses: {
    where: { withdrawal: null },
    include: { batch: true },
    orderBy: { at: 'desc' },
    take: 100,
  },
} satisfies Prisma.MouldInclude;

export type MouldRow = Prisma.MouldGetPayload<{ include: typeof included }>;

const lastSound = (mould: MouldRow): Date | null =>
  mould.inspections.find(({ result }) => result === 'sound')?.at ?? null;

export const inspectionView = (row: MouldRow['inspections'][number]): InspectionView => ({
  id: row.id,
  result: row.result,
  note: row.note,
  at: row.at.toISOString(),
});

export const mouldView = (mould: MouldRow): MouldView => ({
  id: mould.id,
  tag: mould.tag,
  designId: mould.designId,
  designName: mould.design.name,
  cavities: mould.design.rows * mould.design.columns,
  state: mould.state,
  inBatchCode: mould.uses.find(({ batch }) => batch.state === 'open')?.batch.code ?? null,
  lastInspectedAt: mould.inspections[0]?.at.toISOString() ?? null,
  lastSoundAt: lastSound(mould)?.toISOString() ?? null,
});

export const mouldDetailView = (mould: MouldRow): MouldDetailView => {
  const since = lastSound(mould) ?? mould.createdAt;
  return {
    ...mouldView(mould),
    inspections: mould.inspections.map(inspectionView),
    uses: mould.uses.map((use) => ({
      batchId: use.batchId,
      batchCode: use.batch.code,
      cavitiesFilled: use.cavitiesFilled,
      rejectCavities: use.rejectCavities,
      at: use.at.toISOString(),
    })),
    usedSinceSound: mould.uses.some(({ at }) => at >= since),
  };
};

export const findMould = (tx: Tx, tag: string): Promise<MouldRow | null> =>
  tx.mould.findUnique({ where: { tag }, include: included });

export interface MouldFilter {
  readonly designId: string | undefined;
  readonly state: string | undefined;
  readonly after: string | undefined;
}

/** Tags in order, from the one after `after`. */
export const listMoulds = (tx: Tx, limit: number, filter: MouldFilter): Promise<MouldRow[]> =>
  tx.mould.findMany({
    where: {
      ...(filter.designId === undefined ? {} : { designId: filter.designId }),
      ...(filter.state === undefined ? {} : { state: filter.state }),
      ...(filter.after === undefined ? {} : { tag: { gt: filter.after } }),
    },
    include: included,
    orderBy: { tag: 'asc' },
    take: limit + 1,
  });
