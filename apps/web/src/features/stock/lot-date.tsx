import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Caution, State } from '../../shared/kit/page';
import { Why } from '../../shared/kit/why';
import { FreezerState } from './lot-freezer';
import { useLotDate } from '../../shared/lots/lot-state';
import { stockMessages } from '../../shared/lots/messages';

type Lot = components['schemas']['LotView'];

/** The lot's date; it opens into the lines that set it. */
export const LotDate = ({ lot }: { readonly lot: Lot }) => {
  const t = useMessages(stockMessages);
  const formats = useFormats();
  const dateOf = useLotDate();
  const { code } = lot;
  const dates = useRead('/api/lots/{code}/dates', { params: { path: { code } } });
  if (dates.data === undefined || dates.data.reasons.length === 0) return <>{dateOf(lot)}</>;
  return (
    <>
      <FreezerState frozenOn={dates.data.frozenOn} thawedOn={dates.data.thawedOn} />
      <Why what={dateOf(lot)}>
        <ul>
          {dates.data.reasons.map((reason) => (
            <li key={reason.kind + reason.text}>
              {reason.day !== null && <strong>{formats.day(reason.day)} </strong>}
              {reason.text} {reason.rules && <State tone="caution">{t('rules')}</State>}
            </li>
          ))}
        </ul>
        <Caution>{dates.data.caution}</Caution>
      </Why>
    </>
  );
};
