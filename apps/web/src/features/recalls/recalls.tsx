import { Link } from '@tanstack/react-router';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page, State } from '../../shared/kit/page';
import { TraceNav } from '../../shared/rooms/trace-nav';
import { recallMessages } from './messages';

const Recalls = () => {
  const t = useMessages(recallMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const may = useMay('maker', 'seller');
  const list = useList('/api/recalls');
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        <>
          <Link to="/trace/recall-sizes" className="button-link">
            {t('sizesLink')}
          </Link>
          {may && (
            <Link to="/trace/recalls/new" className="button-link button-link-main">
              {t('open')}
            </Link>
          )}
        </>
      }
    >
      <TraceNav />
      <Loaded query={list.query}>
        {(rows) => (
          <DataTable
            caption={t('title')}
            rows={rows}
            rowKey={({ code }) => code}
            csvName="recalls"
            empty={t('none')}
            columns={[
              {
                key: 'code',
                title: t('number'),
                cell: (row) => (
                  <Link to="/trace/recalls/$code" params={{ code: row.code }}>
                    <code>{row.code}</code>
                  </Link>
                ),
                text: (row) => row.code,
              },
              {
                key: 'mode',
                title: t('mode'),
                cell: (row) => (
                  <State tone={row.mode === 'real' ? 'warn' : 'plain'}>{word(row.mode)}</State>
                ),
                text: (row) => row.mode,
              },
              {
                key: 'reason',
                title: t('reason'),
                cell: (row) => row.reason,
                text: (row) => row.reason,
              },
              {
                key: 'state',
                title: t('state'),
                cell: (row) => word(row.state),
                text: (row) => row.state,
              },
              {
                key: 'opened',
                title: t('opened'),
                tight: true,
                cell: (row) => formats.instant(row.openedAt),
                text: (row) => row.openedAt,
              },
            ]}
          />
        )}
      </Loaded>
    </Page>
  );
};

export default Recalls;
