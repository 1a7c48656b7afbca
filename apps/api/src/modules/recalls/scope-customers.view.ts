import type { Tx } from '../../platform/database/prisma';
import { detailOf, recoveredIn } from './recall-actions';
import { type CaseWithActions, customersById } from './recalls.repository';
import type { ScopeCustomerView, ScopeSaleView } from './scope.dto';
import { piecesSent, recoveredGrams, sentGrams } from './scope-figures';

/** Everyone who got goods of the case, with how many and what came back. */
export const customerViews = async (
  tx: Tx,
  recall: CaseWithActions,
  sales: readonly ScopeSaleView[],
  frozenSales: readonly ScopeSaleView[],
): Promise<ScopeCustomerView[]> => {
  const sent = sentGrams(sales);
  const recovered = recoveredIn(recall);
  const atFreezing = new Set(frozenSales.map((sale) => sale.customerId));
  const told = new Set(
    recall.actions
      .filter((action) => action.kind === 'customer_told')
      .map((action) => detailOf(action)['customerId']),
  );
  const customers = await customersById(
    tx,
    [...sent.keys()].flatMap((id) => id ?? []),
  );
  return customers.map((customer) => ({
    id: customer.id,
    name: customer.name,
    addressLines: customer.addressLines,
    phone: customer.phone,
    email: customer.email,
    boxes: piecesSent(sales, customer.id, 'box').toFixed(3),
    pieces: piecesSent(sales, customer.id, 'piece').toFixed(3),
    distributedGrams: (sent.get(customer.id) ?? recoveredGrams([], null)).toFixed(3),
    recoveredGrams: recoveredGrams(recovered, customer.id).toFixed(3),
    told: told.has(customer.id),
    learnedLater: !atFreezing.has(customer.id),
  }));
};
