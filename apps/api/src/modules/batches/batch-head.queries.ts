import type { StockShare } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, ProblemError, RefusalError } from '../../platform/problems';
import type { Actor } from '../../platform/requests/request-context';
import { named, say } from '../../domain/words/say';

export type BatchKind = 'cook' | 'charge' | 'cast' | 'pack';

/** What every change of a batch asks first. */
export interface BatchHead {
  readonly id: string;
  readonly code: string;
  readonly kind: BatchKind;
  readonly state: 'open' | 'finished' | 'abandoned';
  readonly recipeVersionId: string | null;
  readonly version: number;
  /** Of a charge: what its tank was meant to hold then; it may hold something else by now. */
  readonly chargedItemId: string | null;
  /** What the recipe version takes and as what, in the order of its lines. */
  readonly uses: readonly { readonly itemId: string; readonly role: string }[];
}

/** @throws RefusalError not-found */
export const findBatchHead = async (tx: Tx, id: string): Promise<BatchHead> => {
  const rows = await tx.$queryRaw<BatchHead[]>`
    SELECT id, code, kind, state, recipe_version_id AS "recipeVersionId", version,
      (SELECT item_id FROM lot WHERE batch.kind = 'charge' AND lot.batch_id = batch.id
        AND output_role = 'product' ORDER BY lot.id LIMIT 1) AS "chargedItemId",
      (SELECT COALESCE(json_agg(json_build_object('itemId', component_id, 'role', role)
        ORDER BY position), '[]') FROM recipe_line WHERE version_id = recipe_version_id) AS uses
    FROM batch WHERE id = ${id}::uuid`;
  return orNotFound(rows[0], 'batch', id);
};

/** @throws RefusalError not-found; ProblemError when a seller touches what is cooked or cast */
export const loadBatchHead = async (tx: Tx, actor: Actor, id: string): Promise<BatchHead> => {
  const head = await findBatchHead(tx, id);
  refuseSellerUnlessPacking(actor, head.kind);
  return head;
};

/** A seller packs; cooking, casting and tanks are a maker's. */
export const refuseSellerUnlessPacking = (actor: Actor, kind: BatchKind): void => {
  if (actor.role !== 'seller' || kind === 'pack') return;
  throw new ProblemError(
    'not-allowed',
    403,
    say`Not allowed for your role`,
    say`You are signed in as ${actor.userName} (seller). This needs: owner or maker. Ask the owner.`,
  );
};

/** @throws RefusalError batch-not-open */
export const requireOpen = (head: BatchHead): void => {
  if (head.state === 'open') return;
  throw new RefusalError({
    code: 'batch-not-open',
    detail: say`Batch ${head.code} is ${named(head.state)}. Book into an open batch; put a finished one right with a correction.`,
    facts: { batchCode: head.code, state: head.state },
  });
};

export interface StoredDraw extends StockShare {
  readonly id: string;
  readonly batchId: string;
  readonly lotId: string;
  readonly lotCode: string;
  readonly role: string;
  readonly isReversal: boolean;
  readonly reversed: boolean;
}

interface DrawRow {
  readonly id: string;
  readonly batchId: string;
  readonly lotId: string;
  readonly lotCode: string;
  readonly role: string;
  readonly isReversal: boolean;
  readonly reversed: boolean;
  readonly quantity: string;
  readonly massG: string;
  readonly cost: string;
}

/** Draws of a batch in the order in which they were booked, reversals included. */
export const loadDraws = async (tx: Tx, batchId: string): Promise<StoredDraw[]> => {
  const rows = await tx.$queryRaw<DrawRow[]>`
    SELECT draw.id, draw.batch_id AS "batchId", draw.lot_id AS "lotId", lot.code AS "lotCode",
      draw.role, draw.reverses_id IS NOT NULL AS "isReversal",
      EXISTS (SELECT 1 FROM draw back WHERE back.reverses_id = draw.id) AS reversed,
      draw.quantity::text, draw.mass_g::text AS "massG", draw.cost::text
    FROM draw JOIN lot ON lot.id = draw.lot_id
    WHERE draw.batch_id = ${batchId}::uuid ORDER BY draw.at, draw.id`;
  return rows.map((row) => ({
    ...row,
    quantity: new Decimal(row.quantity),
    massG: new Decimal(row.massG),
    cost: new Decimal(row.cost),
  }));
};
