import type { Tx } from '../../platform/database/prisma';

/**
 * A mark of the newest entries of the journal, to which every change adds. Not the last number
 * alone: an entry with a lower one may be kept later, when its booking took longer.
 */
export const markOfChanges = async (tx: Tx): Promise<string> => {
  const [newest] = await tx.$queryRaw<{ readonly mark: string | null }[]>`
    SELECT md5(string_agg(id::text, ' ' ORDER BY id)) AS mark
    FROM (SELECT id FROM journal_entry ORDER BY id DESC LIMIT 100) AS entry`;
  return newest?.mark ?? '';
};
