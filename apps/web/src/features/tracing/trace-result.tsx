import { useNavigate } from '@tanstack/react-router';
import { lazy, Suspense, useCallback, useMemo } from 'react';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Caution } from '../../shared/kit/page';
import { traceMessages } from './messages';
import { riverOf } from './river-of-trace';
import { BatchesOfTrace, DispatchesOfTrace, LotsOfTrace, ReadingsOfTrace } from './trace-tables';

const RiverPicture = lazy(async () => ({
  default: (await import('../../shared/pictures/river-picture')).RiverPicture,
}));

type Trace = components['schemas']['TraceView'];

/** A trace: the river, then everything in it as registers. */
export const TraceResult = ({ trace }: { readonly trace: Trace }) => {
  const t = useMessages(traceMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const navigate = useNavigate();
  const river = useMemo(
    () =>
      riverOf(trace, {
        supplier: (name) => t('supplierNode', { name }),
        counter: t('counterNode'),
      }),
    // The words follow the language, which remounts the screen's texts by itself.
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [trace],
  );
  const gathered = useCallback(
    (kind: string, count: number) => t('others', { count, kind: word(kind) }),
    // As above: the words follow the language.
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [],
  );
  const open = (key: string): void => {
    if (key.includes(':')) return;
    void navigate({ to: '/trace/lots/$code', params: { code: key } });
  };
  const [middle = ''] = trace.roots;
  return (
    <>
      <Caution>{t('caution')}</Caution>
      <p className="quiet">
        {t('asked', { at: formats.instant(trace.askedAt) })}
        {trace.because !== null && ` · ${t('because', { why: trace.because })}`}
      </p>
      {trace.sharesProblem !== null && <p className="problem">{trace.sharesProblem}</p>}
      {river.flows.length > 0 && (
        <Suspense fallback={null}>
          <RiverPicture
            title={t('river')}
            river={river}
            middle={middle}
            gathered={gathered}
            csvName="trace"
            onOpen={open}
          />
        </Suspense>
      )}
      {trace.direction !== 'forward' && (
        <LotsOfTrace
          title={t('behindTitle')}
          lots={trace.lots.filter(({ side }) => side === 'behind')}
          csvName="trace-behind"
        />
      )}
      {trace.direction !== 'back' && (
        <>
          <LotsOfTrace
            title={t('aheadTitle')}
            lots={trace.lots.filter(({ side }) => side === 'ahead')}
            csvName="trace-ahead"
          />
          <DispatchesOfTrace trace={trace} />
        </>
      )}
      <BatchesOfTrace trace={trace} />
      <ReadingsOfTrace trace={trace} />
    </>
  );
};
