import type { IdempotencyClaim } from '../requests/request-context';
import type { Tx } from './prisma';
import type { By } from './transactions';

/**
 * Stores what the journal says of a booking and, under an Idempotency-Key, its answer. One
 * statement, as every booking ends with it; the key's uniqueness lets only one of two equal
 * requests commit.
 */
export const closeBooking = async (
  tx: Tx,
  by: By,
  claim: IdempotencyClaim | undefined,
  answer: object,
): Promise<void> => {
  const lines = JSON.stringify(by.journal);
  const { key = null, method, path, bodyHash, status } = claim ?? {};
  await tx.$executeRaw`
    WITH kept AS (
      INSERT INTO idempotent_request
        (key, user_id, method, path, body_hash, status, body, created_at)
      SELECT ${key}, ${by.userId}::uuid, ${method}, ${path}, ${bodyHash}, ${status}::integer,
        ${JSON.stringify(answer)}::jsonb, ${by.at}
      WHERE ${key}::text IS NOT NULL
    )
    INSERT INTO journal_entry
      (at, user_id, user_name, from_address, action, subject_kind, subject_id, detail)
    SELECT ${by.at}, ${by.userId}::uuid, ${by.userName}, ${by.fromAddress},
      line ->> 'action', line ->> 'subjectKind', line ->> 'subjectId',
      COALESCE(line -> 'detail', '{}')
    FROM jsonb_array_elements(${lines}::jsonb) WITH ORDINALITY AS said (line, place)
    ORDER BY place`;
};
