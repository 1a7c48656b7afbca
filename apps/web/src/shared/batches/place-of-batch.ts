/** Where in the building a batch is made: its screen stands there, and the way of the goods shows it. */
const pages = {
  cook: '/kitchen/batches/$id',
  charge: '/moulding/batches/$id',
  cast: '/moulding/batches/$id',
  pack: '/packing/batches/$id',
} as const;

export const batchPage = (kind: keyof typeof pages): (typeof pages)[keyof typeof pages] =>
  pages[kind];

/** Whether a path is that of the batch, at whichever place. */
export const isPageOfBatch = (path: string, id: string): boolean =>
  Object.values(pages).some((page) => page.replace('$id', id) === path);

/** Where a batch of an item of that kind is started. */
export const startPage = (itemKind: string): '/kitchen/new' | '/moulding/new' | '/packing/new' => {
  if (itemKind === 'piece') return '/moulding/new';
  return itemKind === 'box' ? '/packing/new' : '/kitchen/new';
};
