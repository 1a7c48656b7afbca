import type { Tx } from '../database/prisma';
import { RefusalError } from '../problems/refusal-error';
import type { IdempotencyClaim } from '../requests/request-context';

/**
 * The stored answer of an earlier request under the same key, if there is one.
 * @throws RefusalError when the key was used for something else.
 */
export const findReplay = async (
  tx: Tx,
  claim: IdempotencyClaim,
  userId: string,
): Promise<object | undefined> => {
  const earlier = await tx.idempotentRequest.findUnique({ where: { key: claim.key } });
  if (earlier === null) return undefined;
  const same =
    earlier.userId === userId &&
    earlier.method === claim.method &&
    earlier.path === claim.path &&
    earlier.bodyHash === claim.bodyHash;
  if (!same) {
    throw new RefusalError({
      code: 'idempotency-key-reused',
      detail: 'This Idempotency-Key was used for another request. Send a new key.',
    });
  }
  return earlier.body as object;
};

export const storeReplay = async (
  tx: Tx,
  claim: IdempotencyClaim,
  by: { userId: string; at: Date },
  answer: object,
): Promise<void> => {
  await tx.idempotentRequest.create({
    data: {
      key: claim.key,
      userId: by.userId,
      method: claim.method,
      path: claim.path,
      bodyHash: claim.bodyHash,
      status: claim.status,
      body: answer,
      createdAt: by.at,
    },
  });
};
