import type { Tx } from '../../platform/database/prisma';
import {
  NEW_WORKSHOP,
  type Role,
  type WorkshopHabits,
} from '../../platform/requests/request-context';
import { newId } from '../../platform/ids/new-id';
import { tokenHash } from './secrets';

export interface OpenSession {
  readonly sessionId: string;
  readonly userId: string;
  readonly userName: string;
  readonly role: Role;
  readonly expiresAt: Date;
  readonly workshop: WorkshopHabits;
}

interface SessionRow extends Omit<OpenSession, 'workshop'> {
  readonly timeZone: string | null;
  readonly codePattern: string | null;
}

/**
 * The session behind a token that has not ended, of a person who may still work. One statement, as
 * every request begins with it.
 */
export const findSession = async (
  tx: Tx,
  token: string,
  now: Date,
): Promise<OpenSession | undefined> => {
  const [row] = await tx.$queryRaw<SessionRow[]>`
    SELECT session.id AS "sessionId", app_user.id AS "userId", app_user.name AS "userName",
      app_user.role, session.expires_at AS "expiresAt",
      workshop.time_zone AS "timeZone", workshop.code_pattern AS "codePattern"
    FROM session JOIN app_user ON app_user.id = session.user_id
      LEFT JOIN workshop ON workshop.id = 1
    WHERE session.token_hash = ${tokenHash(token)} AND session.ended_at IS NULL
      AND session.expires_at > ${now} AND app_user.active`;
  if (row === undefined) return undefined;
  const { timeZone, codePattern, ...session } = row;
  const workshop =
    timeZone === null || codePattern === null ? NEW_WORKSHOP : { timeZone, codePattern };
  return { ...session, workshop };
};

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
