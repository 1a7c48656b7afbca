import type { ContactDecision } from '../../domain/cross-contact';
import type { Allergen } from '../../domain/specification';
import type { ContactDecision as DecisionRow } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';

/** The latest decision on each allergen of an item in a market. */
export const standingDecisions = (tx: Tx, itemId: string, market: string): Promise<DecisionRow[]> =>
  tx.contactDecision.findMany({
    where: { itemId, market },
    distinct: ['allergen'],
    orderBy: [{ allergen: 'asc' }, { at: 'desc' }, { id: 'desc' }],
  });

export const namesOf = async (tx: Tx, ids: readonly string[]): Promise<Map<string, string>> => {
  const users = await tx.user.findMany({ where: { id: { in: [...ids] } } });
  return new Map(users.map((user) => [user.id, user.name]));
};

/** As the engine reads them: a decision always has its person's name. */
export const decisionsFor = async (
  tx: Tx,
  itemId: string,
  market: string,
): Promise<ContactDecision[]> => {
  const rows = await standingDecisions(tx, itemId, market);
  const names = await namesOf(
    tx,
    rows.map((row) => row.userId),
  );
  return rows.map((row) => ({
    allergen: row.allergen as Allergen,
    decision: row.decision === 'leave_out' ? 'leave_out' : 'state',
    decidedBy: names.get(row.userId) ?? row.userId,
    reason: row.reason,
  }));
};
