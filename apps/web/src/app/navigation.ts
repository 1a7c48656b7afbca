/** The places of the building, in the order in which goods pass through them. */
export const way = [
  { key: 'goodsIn', to: '/goods-in' },
  { key: 'store', to: '/store' },
  { key: 'kitchen', to: '/kitchen' },
  { key: 'moulding', to: '/moulding' },
  { key: 'packing', to: '/packing' },
  { key: 'out', to: '/out' },
] as const;

export const beside = [
  { key: 'trace', to: '/trace' },
  { key: 'recipes', to: '/recipes' },
  { key: 'prices', to: '/prices' },
  { key: 'diary', to: '/diary' },
  { key: 'workshop', to: '/workshop' },
] as const;

export type WayKey = (typeof way)[number]['key'];
export type Waiting = Partial<Record<WayKey, number>>;
