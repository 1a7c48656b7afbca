import { useList } from '../api/use-list';
import type { Waiting } from './navigation';

/**
 * What waits at each place: lots without an approved specification at the door, lots on hold in the
 * store, batches in hand where they are made, orders to send. Beyond one page the count is a floor.
 */
export const useWaiting = (): Waiting => {
  const held = useList('/api/lots', { state: 'on_hold' });
  const cook = useList('/api/batches', { state: 'open', kind: 'cook' });
  const cast = useList('/api/batches', { state: 'open', kind: 'cast' });
  const pack = useList('/api/batches', { state: 'open', kind: 'pack' });
  const orders = useList('/api/orders', { state: 'open' });
  const noPaper = held.rows.filter((lot) =>
    lot.holds.some((hold) => hold.releasedAt === null && hold.kind === 'no_specification'),
  ).length;
  const known = (list: { readonly query: { readonly data: unknown } }, count: number) =>
    list.query.data === undefined ? undefined : count;
  const counts = {
    goodsIn: known(held, noPaper),
    store: known(held, held.rows.length),
    kitchen: known(cook, cook.rows.length),
    moulding: known(cast, cast.rows.length),
    packing: known(pack, pack.rows.length),
    out: known(orders, orders.rows.length),
  };
  return Object.fromEntries(Object.entries(counts).filter(([, count]) => count !== undefined));
};
