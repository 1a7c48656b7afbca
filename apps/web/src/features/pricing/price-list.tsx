import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { State } from '../../shared/kit/page';
import { priceMessages } from './messages';

type Row = components['schemas']['PriceListRowView'];

/** Every piece and box with its price, cost and margin. */
export const PriceList = ({ rows }: { readonly rows: readonly Row[] }) => {
  const t = useMessages(priceMessages);
  const formats = useFormats();
  const money = (amount: string | null | undefined): string | null =>
    amount === null || amount === undefined ? null : formats.money(amount);
  return (
    <DataTable
      caption={t('list')}
      rows={rows}
      rowKey={({ itemId }) => itemId}
      csvName="prices"
      empty={t('none')}
      columns={[
        {
          key: 'item',
          title: t('item'),
          cell: (row) => (
            <Link to="/prices/$id" params={{ id: row.itemId }}>
              {row.itemName}
            </Link>
          ),
          text: (row) => row.itemName,
        },
        {
          key: 'cost',
          title: t('cost'),
          numeric: true,
          cell: (row) => money(row.cost),
          text: (row) => row.cost ?? '',
        },
        {
          key: 'net',
          title: t('net'),
          numeric: true,
          cell: (row) => money(row.current?.net),
          text: (row) => row.current?.net ?? '',
        },
        {
          key: 'gross',
          title: t('gross'),
          numeric: true,
          cell: (row) => money(row.current?.gross),
          text: (row) => row.current?.gross ?? '',
        },
        {
          key: 'margin',
          title: t('margin'),
          numeric: true,
          cell: (row) => {
            if (row.current === null) return <State tone="caution">{t('notPriced')}</State>;
            const margin =
              row.current.marginPercent === null ? '–' : formats.percent(row.current.marginPercent);
            return row.current.warning === null ? margin : <State tone="warn">{margin}</State>;
          },
          text: (row) => row.current?.marginPercent ?? '',
        },
        {
          key: 'perKg',
          title: t('perKg'),
          numeric: true,
          cell: (row) => money(row.current?.pricePerKg),
          text: (row) => row.current?.pricePerKg ?? '',
        },
        {
          key: 'problem',
          title: t('note'),
          cell: (row) => row.problem,
          text: (row) => row.problem ?? '',
        },
      ]}
    />
  );
};
