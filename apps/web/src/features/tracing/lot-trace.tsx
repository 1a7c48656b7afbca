import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
import { LotBalance } from './lot-balance';
import { traceMessages } from './messages';
import { TraceResult } from './trace-result';

const DIRECTIONS = ['both', 'back', 'forward'] as const;
type Direction = (typeof DIRECTIONS)[number];

const LotTrace = () => {
  const code = useParam('code');
  const t = useMessages(traceMessages);
  const maySell = useMay('maker', 'seller');
  const [direction, setDirection] = useState<Direction>('both');
  const init = { params: { path: { code }, query: { direction } } };
  const trace = useRead('/api/lots/{code}/trace', init, { keep: true });
  const item = trace.data?.lots.find((lot) => lot.code === code)?.itemName;
  return (
    <Page
      title={t('of', { code })}
      lead={
        <Link to="/store/lots/$code" params={{ code }}>
          {item ?? code}
        </Link>
      }
      actions={
        <>
          <LongPaperLink
            href={`/api/lots/${encodeURIComponent(code)}/trace.pdf?direction=${direction}`}
          >
            {t('report')}
          </LongPaperLink>
          {maySell && (
            <Link to="/trace/recalls/new" search={{ lot: code }} className="button-link">
              {t('openRecall')}
            </Link>
          )}
        </>
      }
    >
      <div className="section no-print">
        <OneOf
          label={t('direction')}
          value={direction}
          onChange={(next) => setDirection(next as Direction)}
          choices={DIRECTIONS.map((one) => ({ value: one, label: t(one) }))}
        />
      </div>
      <Loaded query={trace}>{(data) => <TraceResult trace={data} />}</Loaded>
      <LotBalance code={code} />
    </Page>
  );
};

export default LotTrace;
