import type { Tx } from '../database/prisma';
import { RefusalError } from '../problems/refusal-error';
import type { IdempotencyClaim } from '../requests/request-context';
import { say } from '../../domain/words/say';

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
