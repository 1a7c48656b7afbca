import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Section } from '../../shared/kit/page';
import { stockMessages } from '../../shared/lots/messages';

type Taken = components['schemas']['StocktakeView'];

/** What the count changed: nothing, or each difference with what it cost. */
export const Differences = ({ taken }: { readonly taken: Taken }) => {
  const t = useMessages(stockMessages);
  const formats = useFormats();
  const rows = taken.lines.filter(({ difference }) => Number(difference) !== 0);
  return (
    <Section title={t('countDone')}>
      <p role="status">{t('countSum', { cost: formats.money(taken.cost) })}</p>
      <DataTable
        caption={t('countDone')}
        rows={rows}
        rowKey={(row) => row.lotCode}
        csvName="stocktake"
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (row) => row.itemName,
            text: (row) => row.itemName,
          },
          { key: 'lot', title: t('lot'), cell: (row) => row.lotCode, text: (row) => row.lotCode },
          {
            key: 'booked',
            title: t('booked'),
            numeric: true,
            cell: (row) => formats.number(row.bookedQuantity),
            text: (row) => row.bookedQuantity,
          },
          {
            key: 'counted',
            title: t('counted'),
            numeric: true,
            cell: (row) => formats.number(row.countedQuantity),
            text: (row) => row.countedQuantity,
          },
          {
            key: 'difference',
            title: t('difference'),
            numeric: true,
            cell: (row) => formats.number(row.difference),
            text: (row) => row.difference,
          },
        ]}
      />
    </Section>
  );
};
