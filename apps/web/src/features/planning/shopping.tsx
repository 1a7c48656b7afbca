import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Section, State } from '../../shared/kit/page';
import { useItems } from '../../shared/pickers/item-picker';
import { planMessages } from './messages';

/** What to buy, from whom, and the last day on which to order it. */
export const Shopping = ({ plan }: { readonly plan: components['schemas']['PlanView'] }) => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  const items = useItems().rows;
  const amount = (itemId: string, quantity: string): string =>
    formats.quantity(quantity, items.find(({ id }) => id === itemId)?.unit ?? '');
  const rows = plan.shopping.flatMap((order) =>
    order.lines.map((line) => ({ ...line, supplier: order.supplier })),
  );
  return (
    <Section title={t('shopping')} actions={<Link to="/goods-in/buying">{t('buyingTerms')}</Link>}>
      {plan.shopping
        .filter(({ belowMinimum }) => Number(belowMinimum) > 0)
        .map((order) => (
          <p key={order.supplier ?? ''}>
            <State tone="caution">
              {formats.label(order.supplier ?? t('noSupplier'))}{' '}
              {t('belowMinimum', { money: formats.money(order.belowMinimum) })}
            </State>
          </p>
        ))}
      <DataTable
        caption={t('shopping')}
        rows={rows}
        rowKey={(row) => row.itemId + row.orderBy}
        csvName="shopping"
        empty={t('nothing')}
        columns={[
          {
            key: 'supplier',
            title: t('supplier'),
            cell: (row) => row.supplier ?? t('noSupplier'),
            text: (row) => row.supplier ?? '',
          },
          {
            key: 'item',
            title: t('item'),
            cell: (row) => <strong>{row.itemName}</strong>,
            text: (row) => row.itemName,
          },
          {
            key: 'needed',
            title: t('needed'),
            numeric: true,
            cell: (row) => amount(row.itemId, row.needed),
            text: (row) => row.needed,
          },
          {
            key: 'ordered',
            title: t('order'),
            numeric: true,
            cell: (row) =>
              amount(row.itemId, row.ordered) +
              (row.packs === null ? '' : ` (${t('packs', { count: row.packs })})`),
            text: (row) => row.ordered,
          },
          {
            key: 'by',
            title: t('orderBy'),
            cell: (row) => formats.weekday(row.orderBy),
            text: (row) => row.orderBy,
          },
          {
            key: 'on',
            title: t('neededOn'),
            cell: (row) => formats.weekday(row.neededOn),
            text: (row) => row.neededOn,
          },
          {
            key: 'cost',
            title: t('cost'),
            numeric: true,
            cell: (row) => (row.cost === null ? '–' : formats.money(row.cost)),
            text: (row) => row.cost ?? '',
          },
        ]}
      />
    </Section>
  );
};
