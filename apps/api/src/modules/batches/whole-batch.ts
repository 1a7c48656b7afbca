import type { Prisma } from '../../generated/prisma/client';

export const summaryIncluded = {
  recipeVersion: { include: { recipe: { include: { item: true } } } },
  tank: { include: { item: true } },
} satisfies Prisma.BatchInclude;

/** Everything that is shown of one batch. */
export const wholeIncluded = {
  ...summaryIncluded,
  draws: {
    include: { lot: { include: { item: true } }, reversedBy: { select: { id: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  },
  losses: {
    include: { lot: { select: { code: true } }, reversedBy: { select: { id: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  },
  readings: { include: { withdrawal: true }, orderBy: [{ at: 'asc' }, { id: 'asc' }] },
  mouldUses: {
    include: { mould: { include: { design: true } }, withdrawal: true },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  },
  outputs: {
    include: { item: true, holds: { where: { releasedAt: null }, select: { id: true } } },
    orderBy: { code: 'asc' },
  },
} satisfies Prisma.BatchInclude;

export type BatchSummary = Prisma.BatchGetPayload<{ include: typeof summaryIncluded }>;
export type WholeBatch = Prisma.BatchGetPayload<{ include: typeof wholeIncluded }>;
