import type { components } from '../../api/schema';

type Scan = components['schemas']['ScanView'];

export type Destination =
  | { readonly to: '/store/lots/$code'; readonly params: { readonly code: string } }
  | { readonly to: '/kitchen/batches/$id'; readonly params: { readonly id: string } }
  | { readonly to: '/trace/moulds/$tag'; readonly params: { readonly tag: string } }
  | { readonly to: '/trace/recalls/$code'; readonly params: { readonly code: string } }
  | { readonly to: '/trace/complaints/$code'; readonly params: { readonly code: string } }
  | { readonly to: '/goods-in/items/$id'; readonly params: { readonly id: string } }
  | { readonly to: '/moulding/tanks' }
  | { readonly to: '/diary' }
  | { readonly to: '/out' };

const byCode: Readonly<Record<string, ((code: string) => Destination) | undefined>> = {
  lot: (code) => ({ to: '/store/lots/$code', params: { code } }),
  mould: (tag) => ({ to: '/trace/moulds/$tag', params: { tag } }),
  recall: (code) => ({ to: '/trace/recalls/$code', params: { code } }),
  complaint: (code) => ({ to: '/trace/complaints/$code', params: { code } }),
};

const byId: Readonly<Record<string, ((id: string) => Destination) | undefined>> = {
  batch: (id) => ({ to: '/kitchen/batches/$id', params: { id } }),
  item: (id) => ({ to: '/goods-in/items/$id', params: { id } }),
};

/** Things that have no screen of their own stand on one with their like. */
const together: Readonly<Record<string, Destination | undefined>> = {
  tank: { to: '/moulding/tanks' },
  place: { to: '/diary' },
  dispatch: { to: '/out' },
};

/** The screen of the thing that was scanned; undefined when there is no one screen for it. */
export const destinationOf = ({ kind, code, id }: Scan): Destination | undefined => {
  if (code !== null && byCode[kind] !== undefined) return byCode[kind](code);
  if (id !== null && byId[kind] !== undefined) return byId[kind](id);
  return together[kind];
};
