import { Prisma } from '../../generated/prisma/client';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';

const asLabelled = {
  item: true,
  holds: { where: { releasedAt: null } },
} as const satisfies Prisma.LotInclude;

export type LabelledLot = Prisma.LotGetPayload<{ include: typeof asLabelled }>;

export const lotToLabel = async (tx: Tx, code: string): Promise<LabelledLot> =>
  orNotFound(await tx.lot.findUnique({ where: { code }, include: asLabelled }), 'lot', code);

/**
 * Grams of shell and cap in a lot: as drawn in its cast, or, for a box, in the casts of the pieces
 * that lie in it. Null when no shell was drawn as such.
 */
export const shellMassG = async (tx: Tx, lotId: string): Promise<Decimal | null> => {
  const rows = await tx.$queryRaw<{ shell: Prisma.Decimal | null }[]>(Prisma.sql`
    WITH pieces AS (
      SELECT lot.batch_id, lot.made_mass_g AS mass FROM lot
        JOIN batch ON batch.id = lot.batch_id AND batch.kind = 'cast'
        WHERE lot.id = ${lotId}::uuid
      UNION ALL
      SELECT piece.batch_id, sum(draw.mass_g) FROM lot
        JOIN batch ON batch.id = lot.batch_id AND batch.kind = 'pack'
        JOIN draw ON draw.batch_id = batch.id
        JOIN lot piece ON piece.id = draw.lot_id
        WHERE lot.id = ${lotId}::uuid AND piece.batch_id IS NOT NULL
        GROUP BY piece.batch_id)
    SELECT sum(pieces.mass * cast_draws.shell / cast_draws.total)::numeric(14, 3) AS shell
    FROM pieces CROSS JOIN LATERAL (
      SELECT sum(mass_g) FILTER (WHERE role IN ('shell', 'cap')) AS shell, sum(mass_g) AS total
      FROM draw WHERE draw.batch_id = pieces.batch_id) cast_draws
    WHERE cast_draws.total > 0`);
  const shell = rows[0]?.shell ?? null;
  return shell === null ? null : new Decimal(shell.toString());
};

/** Whether the lot's latest weighing of packs was accepted: the condition of the e-mark. */
export const eMarkEarned = async (tx: Tx, lotId: string): Promise<boolean> => {
  const latest = await tx.quantityCheck.findFirst({
    where: { lotId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    select: { state: true },
  });
  return latest?.state === 'accepted';
};
