import { api, must } from '../../api/client';
import type { components } from '../../api/schema';

/** The lot with a code as it was scanned or typed. */
export const findLot = (code: string): Promise<components['schemas']['LotView']> =>
  must(api.GET('/api/lots/{code}', { params: { path: { code: code.trim() } } }));
