import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import type { LotForUse } from '../stock';
import type { BatchHead } from './batch-head.queries';
import type { AcceptanceDto } from './bench.dto';

/** A lot on its way into a batch whose recipe doesn't name its item, or whose tank holds another. */
export interface ForeignLotDraw {
  readonly head: BatchHead;
  readonly lot: LotForUse;
  /** In the lot's unit. */
  readonly quantity: string;
  readonly role: string;
  readonly reason: string | null;
  readonly acceptance: AcceptanceDto | null;
}

/**
 * Lets something else into a batch only when what it changes was accepted, and notes who accepted
 * what. The comparison needs recipes and prices, which themselves build on batches; so batches says
 * here what it asks for, and the slice that compares gives it.
 */
export abstract class Substitutes {
  /** @throws RefusalError substitute-not-accepted, with the differences */
  abstract requireAccepted(tx: Tx, by: By, draw: ForeignLotDraw): Promise<void>;
}
