import { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';

export type DrawnRole = 'heel' | 'rework';

/**
 * Which draws between these lots were left over rather than meant: `made drawn` → heel or rework. A
 * tank's lot counts as heel for the tank's next lot also when the scales showed nothing of it.
 */
export const leftoverRoles = async (
  tx: Tx,
  codes: readonly string[],
): Promise<Map<string, DrawnRole>> => {
  const rows = await tx.$queryRaw<{ made: string; drawn: string; role: DrawnRole }[]>(Prisma.sql`
    SELECT made.code AS made, drawn.code AS drawn,
      CASE WHEN batch.tank_id IS NOT NULL AND drawn_batch.tank_id = batch.tank_id THEN 'heel'
        ELSE 'rework' END AS role
    FROM lot made
    JOIN batch ON batch.id = made.batch_id
    JOIN lot drawn ON drawn.code = ANY(${[...codes]})
    LEFT JOIN batch drawn_batch ON drawn_batch.id = drawn.batch_id
    LEFT JOIN draw ON draw.batch_id = batch.id AND draw.lot_id = drawn.id
      AND draw.reverses_id IS NULL
    WHERE made.code = ANY(${[...codes]})
      AND ((batch.tank_id IS NOT NULL AND drawn_batch.tank_id = batch.tank_id AND drawn.id <> made.id)
        OR draw.role = 'rework')
      AND NOT EXISTS (SELECT 1 FROM draw meant WHERE meant.batch_id = batch.id
        AND meant.lot_id = drawn.id AND meant.reverses_id IS NULL
        AND meant.role NOT IN ('heel', 'rework')
        AND NOT EXISTS (SELECT 1 FROM draw undone WHERE undone.reverses_id = meant.id))`);
  return new Map(rows.map((row) => [`${row.made} ${row.drawn}`, row.role]));
};
