import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useDraft } from '../../shared/offline/use-draft';
import { useMessages } from '../../shared/language/catalogue';
import { stockMessages } from '../../shared/lots/messages';

export type Lot = components['schemas']['LotView'];
type Taken = components['schemas']['StocktakeView'];

/** What of a lot stands in the list while somebody counts. */
export type CountedLot = Pick<
  Lot,
  'code' | 'itemName' | 'unit' | 'onHandQuantity' | 'placeName'
> & { readonly counted: string };

interface Draft {
  readonly lots: readonly CountedLot[];
  readonly note: string;
}

const EMPTY: Draft = { lots: [], note: '' };

/** A stocktake in the making: it survives a reload, and is booked whole, in one step. */
export const useCount = () => {
  const t = useMessages(stockMessages);
  const book = useBooking();
  const { value: draft, change, clear } = useDraft('stocktake', EMPTY);
  const [state, setState] = useState<{
    working: boolean;
    error?: unknown;
    taken?: Taken | 'waits';
  }>({ working: false });
  const put = (lots: readonly CountedLot[]): void => change((now) => ({ ...now, lots }));
  const write = (lot: Lot | CountedLot, counted: string): void => {
    const { code, itemName, unit, onHandQuantity, placeName } = lot;
    const row = { code, itemName, unit, onHandQuantity, placeName, counted };
    put(
      draft.lots.some((one) => one.code === code)
        ? draft.lots.map((one) => (one.code === code ? row : one))
        : [...draft.lots, row],
    );
  };
  const counted = draft.lots.filter((lot) => lot.counted !== '');
  const bookIt = async (): Promise<void> => {
    setState({ working: true });
    try {
      const done = await book({
        path: '/api/stocktakes',
        body: {
          counts: counted.map((lot) => ({ lotCode: lot.code, countedQuantity: lot.counted })),
          ...(draft.note === '' ? {} : { note: draft.note }),
        },
        label: t('countLabel', { count: counted.length }),
        lane: 'stocktake',
      });
      clear();
      setState({ working: false, taken: done.kind === 'done' ? done.answer : 'waits' });
    } catch (error) {
      setState({ working: false, error });
    }
  };
  return {
    ...state,
    lots: draft.lots,
    counted: counted.length,
    note: draft.note,
    write,
    changeNote: (note: string) => change((now) => ({ ...now, note })),
    giveUp: clear,
    bookIt,
  };
};
