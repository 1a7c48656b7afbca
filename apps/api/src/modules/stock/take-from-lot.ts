import type { Temporal } from 'temporal-polyfill';
import { checkUsable, type StockShare, take } from '../../domain/stock';
import type { Decimal } from '../../domain/units';
import { orRefuse } from '../../platform/problems';
import type { LotForUse } from './lots-for-use.queries';

/**
 * The share of weight and cost that leaves a lot with a quantity, once the lot may be used today.
 * Books nothing: whoever calls it writes the draw or the dispatch line in the same transaction.
 * @throws RefusalError when the lot may not be used or holds less
 */
export const takeFromLot = (
  lot: LotForUse,
  quantity: Decimal,
  today: Temporal.PlainDate,
): StockShare => orRefuse(take(orRefuse(checkUsable(lot, today)), quantity));
