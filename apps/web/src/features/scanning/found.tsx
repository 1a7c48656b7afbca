import { Link, useNavigate } from '@tanstack/react-router';
import { useEffect } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useSearchText } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Page, Section } from '../../shared/kit/page';
import { LotLink } from '../../shared/lots/lot-table';
import { destinationOf } from './destination';
import { foundMessages } from './messages';

type Scan = components['schemas']['ScanView'];

const Goods = ({ scan, text }: { readonly scan: Scan; readonly text: string }) => {
  const t = useMessages(foundMessages);
  const formats = useFormats();
  return (
    <>
      {scan.warning !== null && <Caution>{scan.warning}</Caution>}
      {scan.lots.length > 0 && (
        <Section title={t('lots')}>
          <ul className="plain-list">
            {scan.lots.map((lot) => (
              <li key={lot.code} className="row line">
                <strong>{lot.itemName}</strong> <LotLink code={lot.code} />
                <span>
                  {t('here', { quantity: formats.quantity(lot.onHandQuantity, lot.unit) })}
                </span>
                <span className="quiet">{lot.placeName}</span>
              </li>
            ))}
          </ul>
        </Section>
      )}
      <div className="actions">
        {scan.goodsIn !== null && (
          <Link to="/goods-in/new" search={{ scan: text }} className="button-link button-link-main">
            {t('takeIn')}
          </Link>
        )}
        <Link to="/trace/from" search={{ kind: 'text', text }} className="button-link">
          {t('trace')}
        </Link>
        <Link to="/trace/complaints" search={{ code: text }} className="button-link">
          {t('complain')}
        </Link>
      </div>
    </>
  );
};

/** Opens what was scanned; what has no screen of its own is shown here with what can be done. */
const Found = () => {
  const t = useMessages(foundMessages);
  const text = useSearchText('text') ?? '';
  const navigate = useNavigate();
  const scan = useRead('/api/scan', { params: { query: { text } } }, { enabled: text !== '' });
  const destination = scan.data === undefined ? undefined : destinationOf(scan.data);
  useEffect(() => {
    if (destination !== undefined) void navigate({ ...destination, replace: true });
    // The destination is made anew from the answer on each render.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [scan.data]);
  return (
    <Page title={scan.data?.title ?? t('title')} lead={<code>{text}</code>}>
      <Loaded query={scan}>
        {(data) => (
          <>
            {data.kind === 'unknown' && (
              <>
                <p>{t('unknown', { text })}</p>
                <p className="quiet">{t('unknownHelp')}</p>
              </>
            )}
            {destination === undefined && <Goods scan={data} text={text} />}
          </>
        )}
      </Loaded>
    </Page>
  );
};

export default Found;
