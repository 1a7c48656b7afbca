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

/** The screen of the thing that was scanned; undefined when there is no one screen for it. */
export const destinationOf = (scan: Scan): Destination | undefined => {
  const { kind, code, id } = scan;
  if (kind === 'lot' && code !== null) return { to: '/store/lots/$code', params: { code } };
  if (kind === 'batch' && id !== null) return { to: '/kitchen/batches/$id', params: { id } };
  if (kind === 'mould' && code !== null) return { to: '/trace/moulds/$tag', params: { tag: code } };
  if (kind === 'recall' && code !== null) return { to: '/trace/recalls/$code', params: { code } };
  if (kind === 'complaint' && code !== null) {
    return { to: '/trace/complaints/$code', params: { code } };
  }
  if (kind === 'item' && id !== null) return { to: '/goods-in/items/$id', params: { id } };
  if (kind === 'tank') return { to: '/moulding/tanks' };
  if (kind === 'place') return { to: '/diary' };
  return kind === 'dispatch' ? { to: '/out' } : undefined;
};
