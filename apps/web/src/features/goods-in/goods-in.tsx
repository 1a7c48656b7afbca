import { Link } from '@tanstack/react-router';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { pickerMessages } from '../../shared/pickers/messages';
import { GoodsInNav } from '../../shared/rooms/goods-in-nav';
import { goodsInMessages } from './messages';

const GoodsIn = () => {
  const t = useMessages(goodsInMessages);
  const names = useMessages(pickerMessages);
  const formats = useFormats();
  const may = useMay('maker');
  const list = useList('/api/deliveries');
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        may && (
          <Link to="/goods-in/new" className="button-link button-link-main">
            {t('takeIn')}
          </Link>
        )
      }
    >
      <GoodsInNav />
      <Loaded query={list.query}>
        {(rows) => (
          <DataTable
            caption={t('deliveries')}
            terse
            rows={rows}
            rowKey={({ id }) => id}
            csvName="deliveries"
            onMore={list.more}
            empty={t('noDeliveries')}
            columns={[
              {
                key: 'day',
                title: t('received'),
                tight: true,
                cell: (row) => (
                  <Link to="/goods-in/$id" params={{ id: row.id }}>
                    {formats.day(row.receivedOn)}
                  </Link>
                ),
                text: (row) => row.receivedOn,
              },
              {
                key: 'supplier',
                title: names('supplier'),
                cell: (row) => row.supplierName,
                text: (row) => row.supplierName,
              },
              {
                key: 'reference',
                title: t('reference'),
                cell: (row) => row.reference,
                text: (row) => row.reference ?? '',
              },
              {
                key: 'lines',
                title: t('lines'),
                wide: true,
                cell: (row) => row.lines.map((line) => line.itemName).join(', '),
                text: (row) => row.lines.map((line) => line.itemName).join(', '),
              },
            ]}
          />
        )}
      </Loaded>
    </Page>
  );
};

export default GoodsIn;
