import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useParam } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Fact, Facts, Page, Section, State } from '../../shared/kit/page';
import { PaperLink } from '../../shared/kit/paper-link';
import { pickerMessages } from '../../shared/pickers/messages';
import { TraceLink } from '../../shared/starts/trace-link';
import { goodsInMessages } from './messages';

type Delivery = components['schemas']['DeliveryView'];
type Line = components['schemas']['DeliveryLineView'];

const LineState = ({ line }: { readonly line: Line }) => {
  const t = useMessages(goodsInMessages);
  if (!line.accepted)
    return <State tone="warn">{t('refusedLine', { why: line.refusalReason ?? '' })}</State>;
  return line.heldBecause === null ? (
    <State tone="good">{t('ok')}</State>
  ) : (
    <State tone="caution">{t('held', { why: line.heldBecause })}</State>
  );
};

const Lines = ({ delivery }: { readonly delivery: Delivery }) => {
  const t = useMessages(goodsInMessages);
  const names = useMessages(pickerMessages);
  const formats = useFormats();
  return (
    <DataTable
      caption={t('made')}
      rows={delivery.lines}
      rowKey={({ id }) => id}
      csvName="delivery"
      columns={[
        {
          key: 'lot',
          title: t('lotCode'),
          cell: (line) => (
            <Link to="/store/lots/$code" params={{ code: line.lotCode }}>
              <code>{line.lotCode}</code>
            </Link>
          ),
          text: (line) => line.lotCode,
        },
        {
          key: 'item',
          title: names('item'),
          cell: (line) => line.itemName,
          text: (line) => line.itemName,
        },
        {
          key: 'supplierLot',
          title: t('supplierLot'),
          cell: (line) => line.supplierLotCode,
          text: (line) => line.supplierLotCode,
        },
        {
          key: 'quantity',
          title: t('quantity'),
          numeric: true,
          cell: (line) => formats.quantity(line.quantity, line.unit),
          text: (line) => line.quantity,
        },
        {
          key: 'date',
          title: t('date'),
          cell: (line) => {
            const day = line.useBy ?? line.bestBefore;
            return day === null ? '' : formats.day(day);
          },
          text: (line) => line.useBy ?? line.bestBefore ?? '',
        },
        {
          key: 'price',
          title: t('price'),
          numeric: true,
          cell: (line) => formats.money(line.price),
          text: (line) => line.price,
        },
        {
          key: 'state',
          title: t('state'),
          cell: (line) => <LineState line={line} />,
          text: (line) => line.heldBecause ?? line.refusalReason ?? '',
        },
      ]}
    />
  );
};

const DeliveryPage = () => {
  const t = useMessages(goodsInMessages);
  const names = useMessages(pickerMessages);
  const formats = useFormats();
  const id = useParam('id');
  const delivery = useRead('/api/deliveries/{id}', { params: { path: { id } } });
  return (
    <Loaded query={delivery}>
      {(data) => (
        <Page
          title={t('delivery', { day: formats.day(data.receivedOn) })}
          actions={
            <>
              <PaperLink href={`/api/deliveries/${id}/tags.pdf`}>{t('tags')}</PaperLink>
              <TraceLink kind="delivery" id={id} />
              <Link to="/goods-in/new" className="button-link">
                {t('another')}
              </Link>
            </>
          }
        >
          <Facts>
            <Fact name={names('supplier')}>{data.supplierName}</Fact>
            <Fact name={t('received')}>{formats.instant(data.receivedAt)}</Fact>
            {data.reference !== null && <Fact name={t('reference')}>{data.reference}</Fact>}
          </Facts>
          <Section title={t('made')}>
            <Lines delivery={data} />
          </Section>
        </Page>
      )}
    </Loaded>
  );
};

export default DeliveryPage;
