import { Link } from '@tanstack/react-router';
import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Page } from '../../shared/kit/page';
import { TraceNav } from '../../shared/rooms/trace-nav';
import { recallMessages } from './messages';

/** What a recall of each ingredient lot alone would touch: where mixing costs most. */
const RecallSizes = () => {
  const t = useMessages(recallMessages);
  const formats = useFormats();
  const sizes = useRead('/api/trace/recall-sizes', { params: { query: {} } });
  const count = (key: 'boxes' | 'pieces' | 'boxesHere') =>
    ({
      key,
      title: t(key),
      numeric: true,
      cell: (row: Record<typeof key, string>) => formats.number(row[key], 0),
      text: (row: Record<typeof key, string>) => row[key],
    }) as const;
  return (
    <Page title={t('sizes')} lead={t('sizesLead')}>
      <TraceNav />
      <Loaded query={sizes}>
        {(data) => (
          <>
            {data.leftOut !== null && <Caution>{data.leftOut}</Caution>}
            <DataTable
              caption={t('sizes')}
              rows={data.sizes}
              rowKey={({ lot }) => lot}
              csvName="recall-sizes"
              empty={t('noSizes')}
              columns={[
                {
                  key: 'item',
                  title: t('item'),
                  cell: (row) => row.itemName,
                  text: (row) => row.itemName,
                },
                {
                  key: 'lot',
                  title: t('lot'),
                  cell: (row) => (
                    <Link to="/trace/lots/$code" params={{ code: row.lot }}>
                      <code>{row.lot}</code>
                    </Link>
                  ),
                  text: (row) => row.lot,
                },
                {
                  key: 'supplier',
                  title: t('supplier'),
                  cell: (row) => [row.supplier, row.supplierLotCode].filter(Boolean).join(', '),
                  text: (row) => [row.supplier, row.supplierLotCode].filter(Boolean).join(', '),
                },
                {
                  key: 'received',
                  title: t('received'),
                  tight: true,
                  cell: (row) => (row.receivedOn === null ? '–' : formats.day(row.receivedOn)),
                  text: (row) => row.receivedOn ?? '',
                },
                count('boxes'),
                count('pieces'),
                {
                  key: 'customers',
                  title: t('customersTouched'),
                  numeric: true,
                  cell: (row) => formats.number(String(row.customers)),
                  text: (row) => String(row.customers),
                },
                count('boxesHere'),
                {
                  key: 'lots',
                  title: t('lotsTouched'),
                  numeric: true,
                  cell: (row) => formats.number(String(row.lots)),
                  text: (row) => String(row.lots),
                },
              ]}
            />
          </>
        )}
      </Loaded>
    </Page>
  );
};

export default RecallSizes;
