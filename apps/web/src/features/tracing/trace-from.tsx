import { Link } from '@tanstack/react-router';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
import { searchOf, startOf, useStartInAddress } from '../../shared/starts/start-form';
import { traceMessages } from './messages';
import { TraceResult } from './trace-result';

const TraceFrom = () => {
  const t = useMessages(traceMessages);
  const formats = useFormats();
  const mayOpen = useMay('maker', 'seller');
  const form = useStartInAddress();
  const start = startOf(form, formats);
  const trace = useRead('/api/trace', { params: { query: start } });
  return (
    <Page
      title={t('of', { code: form.text === '' ? (trace.data?.because ?? '') : form.text })}
      actions={
        trace.data !== undefined &&
        trace.data.roots.length > 0 && (
          <>
            <LongPaperLink href={`/api/trace/report.pdf?${new URLSearchParams(start).toString()}`}>
              {t('report')}
            </LongPaperLink>
            {mayOpen && (
              <Link to="/trace/recalls/new" search={searchOf(form)} className="button-link">
                {t('openRecall')}
              </Link>
            )}
          </>
        )
      }
    >
      <Loaded query={trace}>{(data) => <TraceResult trace={data} />}</Loaded>
    </Page>
  );
};

export default TraceFrom;
