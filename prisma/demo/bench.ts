import { Decimal, sum } from '../../apps/api/src/domain/units';
import type { DemoClient } from './demo-client';

interface LotRow {
  readonly code: string;
  readonly onHandQuantity: string;
  readonly onHold: boolean;
  readonly expired: boolean;
  readonly itemKind: string;
  /** Set when it was made here: chocolate that is in a tank already. */
  readonly batchCode: string | null;
  readonly bestBefore: string | null;
  readonly useBy: string | null;
}

const dateOf = (lot: LotRow): string => lot.useBy ?? lot.bestBefore ?? '9999-12-31';

/** Lots of an item that may be used now, first expired first. */
const usableLots = async (client: DemoClient, itemId: string): Promise<LotRow[]> => {
  const page = await client.get<{ items: LotRow[] }>(
    `/lots?item=${itemId}&state=on_hand&limit=500`,
  );
  return page.items
    .filter((lot) => !lot.onHold && !lot.expired)
    .filter((lot) => lot.itemKind !== 'ingredient' || lot.batchCode === null)
    .sort((a, b) => dateOf(a).localeCompare(dateOf(b)) || a.code.localeCompare(b.code));
};

export interface Portion {
  readonly lotCode: string;
  readonly quantity: string;
}

/** A quantity of an item from as many lots as it takes, first expired first. */
export const portions = async (
  client: DemoClient,
  itemId: string,
  quantity: Decimal,
): Promise<Portion[]> => {
  const taken: Portion[] = [];
  let left = quantity;
  for (const lot of await usableLots(client, itemId)) {
    if (!left.greaterThan(0)) break;
    const part = Decimal.min(left, lot.onHandQuantity);
    taken.push({ lotCode: lot.code, quantity: part.toFixed(3) });
    left = left.minus(part);
  }
  if (left.greaterThan(0)) throw new Error(`demo: ${left.toFixed(3)} missing of item ${itemId}`);
  return taken;
};

/** Draws an item into an open batch and returns the lots that were drawn. */
export const drawItem = async (
  client: DemoClient,
  batchId: string,
  line: { readonly itemId: string; readonly quantity: Decimal; readonly role?: string },
): Promise<Portion[]> => {
  const taken = await portions(client, line.itemId, line.quantity);
  for (const portion of taken) {
    await client.post(`/batches/${batchId}/draws`, {
      ...portion,
      ...(line.role === undefined ? {} : { role: line.role }),
    });
  }
  return taken;
};

/** How much of an item may be used now. */
export const onHand = async (client: DemoClient, itemId: string): Promise<Decimal> =>
  sum((await usableLots(client, itemId)).map((lot) => new Decimal(lot.onHandQuantity)));

export interface OpenBatch {
  readonly id: string;
  readonly code: string;
}

export const openBatch = (
  client: DemoClient,
  itemId: string,
  rest: object = {},
): Promise<OpenBatch> => client.post<OpenBatch>('/batches', { itemId, ...rest });
