import { useRead } from '../../api/use-api';
import { useSearchText } from '../../app/use-address';
import type { operations } from '../../api/schema';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { traceMessages } from './messages';
import { TraceResult } from './trace-result';

type Query = operations['TracingController_from']['parameters']['query'];

/** Midnight of the day where this device stands; a window is widened rather than narrowed. */
const instantOf = (day: string | undefined, end: boolean): string | undefined =>
  day === undefined || day === ''
    ? undefined
    : new Date(`${day}T${end ? '23:59:59' : '00:00:00'}`).toISOString();

const TraceFrom = () => {
  const t = useMessages(traceMessages);
  const text = useSearchText('text');
  const asked = {
    kind: useSearchText('kind') ?? 'text',
    id: useSearchText('id'),
    text,
    from: instantOf(useSearchText('from'), false),
    to: instantOf(useSearchText('to'), true),
  };
  const query = Object.fromEntries(
    Object.entries(asked).filter(([, value]) => value !== undefined && value !== ''),
  ) as unknown as Query;
  const trace = useRead('/api/trace', { params: { query } });
  return (
    <Page title={t('of', { code: text ?? trace.data?.because ?? '' })}>
      <Loaded query={trace}>{(data) => <TraceResult trace={data} />}</Loaded>
    </Page>
  );
};

export default TraceFrom;
