import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import type { ComplaintView } from './complaints.dto';
import { say } from '../../domain/words/say';

const shown = {
  lot: { select: { id: true, code: true, item: { select: { name: true } } } },
  photos: {
    select: { id: true, name: true, mediaType: true, at: true },
    orderBy: { at: 'asc' },
  },
} as const satisfies Prisma.ComplaintInclude;

export type ComplaintRow = Prisma.ComplaintGetPayload<{ include: typeof shown }>;

const HEALTH = new Set(['illness', 'allergic_reaction', 'foreign_body']);

const CAUTION = say`Somebody’s health may be in question: advise them to see a doctor, keep the rest of the goods, and tell the food authority without delay when the product may be unsafe.`;

export const complaintView = (row: ComplaintRow): ComplaintView => ({
  code: row.code,
  codeAsRead: row.codeAsRead,
  lotCode: row.lot?.code ?? null,
  itemName: row.lot?.item.name ?? null,
  kind: row.kind,
  what: row.what,
  customer: row.customer,
  receivedOn: dayFromDb(row.receivedOn),
  outcome: row.outcome,
  closedAt: row.closedAt?.toISOString() ?? null,
  photos: row.photos.map((photo) => ({ ...photo, at: photo.at.toISOString() })),
  caution: HEALTH.has(row.kind) ? CAUTION : null,
  version: row.version,
});

export const findComplaint = (tx: Tx, code: string): Promise<ComplaintRow | null> =>
  tx.complaint.findUnique({ where: { code }, include: shown });

export const findComplaints = (tx: Tx, codes: readonly string[]): Promise<ComplaintRow[]> =>
  tx.complaint.findMany({ where: { code: { in: [...codes] } }, include: shown });

/** Latest first; ids sort by time, so the id is the cursor. */
export const listComplaints = (
  tx: Tx,
  limit: number,
  filter: { after: string | undefined; closed: boolean | undefined },
): Promise<ComplaintRow[]> =>
  tx.complaint.findMany({
    where: {
      ...(filter.closed === undefined ? {} : { closedAt: filter.closed ? { not: null } : null }),
      ...(filter.after === undefined ? {} : { id: { lt: filter.after } }),
    },
    include: shown,
    orderBy: { id: 'desc' },
    take: limit + 1,
  });

export const lotByCode = (tx: Tx, code: string) =>
  tx.lot.findUnique({ where: { code }, select: { id: true, code: true } });

/** Boxes and pieces that can be in a customer's hands: those that were sent, latest first. */
export const codesSentOut = (tx: Tx) =>
  tx.lot.findMany({
    where: { item: { kind: { in: ['box', 'piece'] } }, dispatchLines: { some: {} } },
    select: { code: true, madeOn: true, item: { select: { name: true } } },
    orderBy: { madeOn: 'desc' },
    take: 50_000,
  });

export const photoOf = (tx: Tx, complaintCode: string, id: string) =>
  tx.complaintPhoto.findFirst({ where: { id, complaint: { code: complaintCode } } });

export const samePhoto = (tx: Tx, complaintId: string, sha256: string) =>
  tx.complaintPhoto.findFirst({ where: { complaintId, sha256 }, select: { id: true } });
