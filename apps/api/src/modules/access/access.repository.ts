import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import { tokenHash } from './secrets';

export const findSession = (tx: Tx, token: string, now: Date) =>
  tx.session.findFirst({
    where: {
      tokenHash: tokenHash(token),
      endedAt: null,
      expiresAt: { gt: now },
      user: { active: true },
    },
    include: { user: true },
  });

export const createSession = (
  tx: Tx,
  session: {
    userId: string;
    kind: 'browser' | 'script';
    token: string;
    now: Date;
    expiresAt: Date;
  },
) =>
  tx.session.create({
    data: {
      id: newId(),
      userId: session.userId,
      kind: session.kind,
      tokenHash: tokenHash(session.token),
      createdAt: session.now,
      expiresAt: session.expiresAt,
    },
  });

export const endSession = (tx: Tx, id: string, at: Date) =>
  tx.session.update({ where: { id }, data: { endedAt: at } });

export const endSessionsOf = (tx: Tx, userId: string, at: Date) =>
  tx.session.updateMany({ where: { userId, endedAt: null }, data: { endedAt: at } });

export const findUser = (tx: Tx, id: string) => tx.user.findUnique({ where: { id } });

export const findUserByName = (tx: Tx, name: string) => tx.user.findUnique({ where: { name } });

export const listUsers = (tx: Tx) => tx.user.findMany({ orderBy: { name: 'asc' } });

export interface NewUser {
  readonly name: string;
  readonly role: string;
  readonly passwordHash: string;
  readonly pinHash: string | null;
}

export const createUser = (tx: Tx, user: NewUser) =>
  tx.user.create({ data: { id: newId(), ...user } });

export const countUsers = (tx: Tx) => tx.user.count();

export const createInvitation = (tx: Tx, token: string, expiresAt: Date) =>
  tx.ownerInvitation.create({ data: { id: newId(), tokenHash: tokenHash(token), expiresAt } });

export const useInvitation = (tx: Tx, token: string, now: Date) =>
  tx.ownerInvitation.updateMany({
    where: { tokenHash: tokenHash(token), usedAt: null, expiresAt: { gt: now } },
    data: { usedAt: now },
  });
