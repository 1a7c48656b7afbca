import type { Tx } from '../database/prisma';
import { RefusalError } from '../problems/refusal-error';
import type { IdempotencyClaim } from '../requests/request-context';
import { say } from '../../domain/words/say';

/** In the place of a request's method: the key was taken so that nothing is ever booked under it. */
export const STOPPED = 'STOPPED';

interface Stored {
  readonly userId: string;
  readonly method: string;
  readonly path: string;
  readonly bodyHash: string;
  readonly body: object;
}

/**
 * The stored answer of an earlier request under the same key, if there is one.
 * @throws RefusalError when the key was used for something else.
 */
export const findReplay = async (
  tx: Tx,
  claim: IdempotencyClaim,
  userId: string,
): Promise<object | undefined> => {
  const [earlier] = await tx.$queryRaw<Stored[]>`
    SELECT user_id AS "userId", method, path, body_hash AS "bodyHash", body
    FROM idempotent_request WHERE key = ${claim.key}`;
  if (earlier === undefined) return undefined;
  if (earlier.userId === userId && earlier.method === STOPPED) {
    throw new RefusalError({
      code: 'work-stopped',
      detail: say`This was stopped before it was done. Nothing was booked.`,
    });
  }
  const same =
    earlier.userId === userId &&
    earlier.method === claim.method &&
    earlier.path === claim.path &&
    earlier.bodyHash === claim.bodyHash;
  if (!same) {
    throw new RefusalError({
      code: 'idempotency-key-reused',
      detail: say`This Idempotency-Key was used for another request. Send a new key.`,
    });
  }
  return earlier.body;
};

/**
 * Takes the key away from its booking: as a key is stored once, either the booking commits or this.
 * A booking that is about to commit is waited for.
 * @returns whether nothing was booked under the key, nor ever will be
 */
export const takeKeyAway = async (tx: Tx, key: string, userId: string): Promise<boolean> => {
  await tx.$executeRaw`
    INSERT INTO idempotent_request (key, user_id, method, path, body_hash, status, body)
    VALUES (${key}, ${userId}::uuid, ${STOPPED}, '', '', 409, '{}')
    ON CONFLICT (key) DO NOTHING`;
  const [kept] = await tx.$queryRaw<{ readonly method: string }[]>`
    SELECT method FROM idempotent_request WHERE key = ${key}`;
  return kept?.method === STOPPED;
};
