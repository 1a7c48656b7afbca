import { Link } from '@tanstack/react-router';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Caution, Section, State } from '../../shared/kit/page';
import { batchMessages } from '../../shared/batches/messages';
import { batchPage } from '../../shared/batches/place-of-batch';
import { partsMessages } from './parts-messages';
import type { Batch } from './use-batch-booking';

/** Boxes are split off and never opened as a part; a pot is, as long as the first one is open. */
const wayOut = ({ kind, parts }: Batch): 'missing' | 'missingPacked' | 'missingClosed' => {
  if (kind === 'pack') return 'missingPacked';
  return parts?.parts[0]?.state === 'open' ? 'missing' : 'missingClosed';
};

/** The pots, goes or runs of boxes of one making: how each stands, and what they made together so far. */
export const BatchParts = ({ batch }: { readonly batch: Batch }) => {
  const t = useMessages(partsMessages);
  const b = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const { parts } = batch;
  if (parts === null) return null;
  const quantity = (text: string): string => formats.quantity(text, batch.unit);
  const { plannedQuantity: planned, missingQuantity: missing } = parts;
  const made = quantity(parts.madeQuantity);
  return (
    <Section title={t('title')}>
      <p>
        {batch.part !== null && (
          <>
            <strong>{b('part', { ...batch.part })}</strong>
            {' · '}
          </>
        )}
        {planned === null
          ? t('sumAlone', { made })
          : t('sum', { made, planned: quantity(planned) })}
      </p>
      {missing !== null && compareExact(missing, '0') > 0 && (
        <Caution>{t(wayOut(batch), { missing: quantity(missing) })}</Caution>
      )}
      <ol className="plain-list">
        {parts.parts.map((part, index) => (
          <li key={part.id} className="row line">
            {part.id === batch.id ? (
              <span>
                <code>{part.code}</code> {t('here')}
              </span>
            ) : (
              <Link to={batchPage(batch.kind)} params={{ id: part.id }} className="button-link">
                {b('part', { number: index + 1, count: parts.parts.length })}{' '}
                <code>{part.code}</code>
              </Link>
            )}
            <State
              tone={
                part.state === 'finished' ? 'good' : part.state === 'abandoned' ? 'warn' : 'plain'
              }
            >
              {word(part.state)}
            </State>
            {part.held && <State tone="caution">{word('on_hold')}</State>}
            {part.plannedQuantity !== null && (
              <span>
                {formats.label(b('planned'))} {quantity(part.plannedQuantity)}
              </span>
            )}
            <span>
              {formats.label(t('made'))} {quantity(part.madeQuantity)}
            </span>
          </li>
        ))}
      </ol>
    </Section>
  );
};
