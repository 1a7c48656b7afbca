import type { components } from '../../api/schema';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { useServiceWords } from '../language/words';
import { State } from '../kit/page';
import { stockMessages } from './messages';

type Lot = components['schemas']['LotView'];

/** All that stands in the way of using the lot, or that nothing does. */
export const LotState = ({ lot }: { readonly lot: Lot }) => {
  const word = useServiceWords();
  const formats = useFormats();
  const standing = lot.holds.filter((hold) => hold.releasedAt === null);
  return (
    <span className="row">
      {lot.refused && <State tone="warn">{word('refused')}</State>}
      {lot.expired && <State tone="warn">{word('expired')}</State>}
      {standing.map((hold) => (
        <State key={hold.id} tone="caution">
          {formats.label(word('on_hold'))} {word(hold.kind)}
        </State>
      ))}
      {Number(lot.onHandQuantity) === 0 && !lot.refused && <State>{word('empty')}</State>}
      {!lot.refused && !lot.expired && !lot.onHold && Number(lot.onHandQuantity) > 0 && (
        <State tone="good">{word('on_hand')}</State>
      )}
    </span>
  );
};

export const useLotDate = () => {
  const t = useMessages(stockMessages);
  const formats = useFormats();
  return (lot: Pick<Lot, 'useBy' | 'bestBefore'>): string => {
    if (lot.useBy !== null) return t('useBy', { day: formats.day(lot.useBy) });
    if (lot.bestBefore !== null) return t('bestBefore', { day: formats.day(lot.bestBefore) });
    return t('noDate');
  };
};
