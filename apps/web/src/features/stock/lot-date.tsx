import type { components } from '../../api/schema';
import { useLotDate } from './lot-state';

type Lot = components['schemas']['LotView'];

/** The lot's date; it opens into the lines that set it. */
export const LotDate = ({ lot }: { readonly lot: Lot }) => {
  const dateOf = useLotDate();
  return <>{dateOf(lot)}</>;
};
