import { Link } from '@tanstack/react-router';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Section, State } from '../../shared/kit/page';
import { LotLink } from '../../shared/lots/lot-table';
import { useLotDate } from '../../shared/lots/lot-state';
import { batchMessages } from '../../shared/batches/messages';
import { correctMessages } from './correct-messages';
import type { Batch } from './use-batch-booking';

/** The lots that the batch made, with what to do with them next. */
export const BatchOutputs = ({ batch }: { readonly batch: Batch }) => {
  const t = useMessages(batchMessages);
  const c = useMessages(correctMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const dateOf = useLotDate();
  if (batch.outputs.length === 0) return null;
  return (
    <Section title={t('made')}>
      <ul className="plain-list">
        {batch.outputs.map((output) => (
          <li key={output.id} className="row line">
            <span className="figure-large">{formats.quantity(output.quantity, output.unit)}</span>
            <strong>{output.itemName}</strong>
            <LotLink code={output.lotCode} />
            {output.role === 'rework' && <State>{word('rework')}</State>}
            {output.takenBackBecause !== null && (
              <State tone="warn">
                {c('takenBack', { reason: output.takenBackBecause })} {c('takenBackCaution')}
              </State>
            )}
            {output.held && <State tone="caution">{word('on_hold')}</State>}
            <span>{dateOf(output)}</span>
            <span className="quiet">{formats.money(output.cost)}</span>
            {batch.kind !== 'cook' && output.takenBackBecause === null && (
              <Link
                to="/packing/labels/$code"
                params={{ code: output.lotCode }}
                className="button-link"
              >
                {t('label')}
              </Link>
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
};
