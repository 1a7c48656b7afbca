import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { type Row, useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { addDays } from '../../shared/formats/days';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section } from '../../shared/kit/page';
import { PaperLink } from '../../shared/kit/paper-link';
import { dispatchMessages } from './messages';
import { LotLink } from '../../shared/lots/lot-table';
import { OutNav } from '../../shared/rooms/out-nav';
import { ReturnDialog } from './return-dialog';

type Dispatch = Row<'/api/dispatches'>;

const Sent = ({ onReturn }: { readonly onReturn: ((dispatch: Dispatch) => void) | undefined }) => {
  const t = useMessages(dispatchMessages);
  const formats = useFormats();
  const list = useList('/api/dispatches');
  const sent = ({ quantity, unit, itemName }: Dispatch['lines'][number]): string =>
    unit === 'g'
      ? `${formats.quantity(quantity, unit)} ${itemName}`
      : `${formats.number(quantity)} × ${itemName}`;
  const what = (row: Dispatch): string =>
    row.lines.map((line) => `${sent(line)} ${line.lotCode}`).join(', ');
  return (
    <Section title={t('sent')}>
      <Loaded query={list.query}>
        {(rows) => (
          <DataTable
            caption={t('sent')}
            terse
            rows={rows}
            rowKey={({ id }) => id}
            csvName="dispatches"
            onMore={list.more}
            empty={t('none')}
            columns={[
              {
                key: 'day',
                title: t('day'),
                tight: true,
                cell: (row) => formats.day(row.sentOn),
                text: (row) => row.sentOn,
              },
              {
                key: 'code',
                title: t('code'),
                cell: (row) => <code>{row.code}</code>,
                text: (row) => row.code,
              },
              {
                key: 'who',
                title: t('toWhom'),
                cell: (row) => row.customerName ?? t('counter'),
                text: (row) => row.customerName ?? '',
              },
              {
                key: 'what',
                title: t('what'),
                wide: true,
                cell: (row) => (
                  <ul>
                    {row.lines.map((line) => (
                      <li key={line.id}>
                        {sent(line)} <LotLink code={line.lotCode} />
                      </li>
                    ))}
                  </ul>
                ),
                text: what,
              },
              {
                key: 'do',
                title: '',
                cell: (row) => (
                  <span className="row">
                    {row.customerId !== null && (
                      <PaperLink href={`/api/dispatches/${row.id}/note.pdf`} leaves>
                        {t('deliveryNote')}
                      </PaperLink>
                    )}
                    {onReturn !== undefined && (
                      <Button variant="default" onClick={() => onReturn(row)}>
                        {t('takeBack')}
                      </Button>
                    )}
                  </span>
                ),
                text: () => '',
              },
            ]}
          />
        )}
      </Loaded>
    </Section>
  );
};

const CounterDays = () => {
  const t = useMessages(dispatchMessages);
  const formats = useFormats();
  const to = formats.today();
  const sales = useRead('/api/dispatches/counter-sales', {
    params: { query: { from: addDays(to, -13), to } },
  });
  return (
    <Section title={t('counterDays')}>
      <Loaded query={sales}>
        {({ items }) => (
          <DataTable
            caption={t('counterDays')}
            small
            rows={items}
            rowKey={(row) => row.day + row.itemId}
            csvName="counter"
            columns={[
              {
                key: 'day',
                title: t('day'),
                tight: true,
                cell: (row) => formats.weekday(row.day),
                text: (row) => row.day,
              },
              {
                key: 'item',
                title: t('item'),
                cell: (row) => row.itemName,
                text: (row) => row.itemName,
              },
              {
                key: 'quantity',
                title: t('quantity'),
                numeric: true,
                cell: (row) => formats.number(row.quantity),
                text: (row) => row.quantity,
              },
            ]}
          />
        )}
      </Loaded>
    </Section>
  );
};

const Out = () => {
  const t = useMessages(dispatchMessages);
  const may = useMay('maker', 'seller');
  const [open, setOpen] = useState<Dispatch>();
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        may && (
          <Link to="/out/new" className="button-link button-link-main">
            {t('send')}
          </Link>
        )
      }
    >
      <OutNav />
      <Sent onReturn={may ? setOpen : undefined} />
      <CounterDays />
      {open !== undefined && <ReturnDialog dispatch={open} onClose={() => setOpen(undefined)} />}
    </Page>
  );
};

export default Out;
