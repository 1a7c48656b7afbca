import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { DataTable } from '../kit/data-table';
import { LotState, useLotDate } from './lot-state';
import { stockMessages } from './messages';

type Lot = components['schemas']['LotView'];

export const LotLink = ({ code }: { readonly code: string }) => (
  <Link to="/store/lots/$code" params={{ code }}>
    <code>{code}</code>
  </Link>
);

/** Lots as a register: what, how much, until when, where, and whether it may be used. */
export const LotTable = (props: {
  readonly caption: string;
  readonly lots: readonly Lot[];
  readonly csvName: string;
  readonly onMore?: (() => void) | undefined;
}) => {
  const t = useMessages(stockMessages);
  const formats = useFormats();
  const dateOf = useLotDate();
  return (
    <DataTable
      caption={props.caption}
      terse
      rows={props.lots}
      rowKey={({ id }) => id}
      csvName={props.csvName}
      onMore={props.onMore}
      empty={t('noLots')}
      columns={[
        {
          key: 'item',
          title: t('item'),
          cell: (lot) => <strong>{lot.itemName}</strong>,
          text: (lot) => lot.itemName,
        },
        {
          key: 'code',
          title: t('lot'),
          cell: (lot) => <LotLink code={lot.code} />,
          text: (lot) => lot.code,
        },
        {
          key: 'onHand',
          title: t('onHand'),
          numeric: true,
          cell: (lot) => formats.quantity(lot.onHandQuantity, lot.unit),
          text: (lot) => lot.onHandQuantity,
        },
        {
          key: 'date',
          title: t('date'),
          tight: true,
          cell: dateOf,
          text: (lot) => lot.useBy ?? lot.bestBefore ?? '',
        },
        {
          key: 'place',
          title: t('place'),
          cell: (lot) => lot.placeName,
          text: (lot) => lot.placeName ?? '',
        },
        {
          key: 'state',
          title: t('state'),
          cell: (lot) => <LotState lot={lot} />,
          text: (lot) => (lot.onHold ? 'on hold' : lot.expired ? 'expired' : 'on hand'),
        },
      ]}
    />
  );
};
