import { Link } from '@tanstack/react-router';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
import { traceMessages } from './messages';
import { TraceResult } from './trace-result';

/** Everything that was cast in a tray since it was last found sound. */
const MouldTrace = () => {
  const tag = useParam('tag');
  const t = useMessages(traceMessages);
  const maySell = useMay('maker', 'seller');
  const trace = useRead('/api/moulds/{tag}/trace', { params: { path: { tag } } });
  return (
    <Page
      title={t('of', { code: tag })}
      actions={
        <>
          <LongPaperLink href={`/api/moulds/${encodeURIComponent(tag)}/trace.pdf`}>
            {t('report')}
          </LongPaperLink>
          {maySell && (
            <Link to="/trace/recalls/new" search={{ mould: tag }} className="button-link">
              {t('openRecall')}
            </Link>
          )}
        </>
      }
    >
      <Loaded query={trace}>{(data) => <TraceResult trace={data} />}</Loaded>
    </Page>
  );
};

export default MouldTrace;
