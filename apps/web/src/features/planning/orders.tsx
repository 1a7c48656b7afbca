import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { byId, seen } from '../../api/seen';
import { useChange } from '../../api/use-api';
import { type Row, useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { MoreButton } from '../../shared/kit/more-button';
import { Page, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { OutNav } from '../../shared/rooms/out-nav';
import { planMessages } from './messages';
import { OrderDialog } from './order-dialog';

type Order = Row<'/api/orders'>;

const OrderCard = (props: {
  readonly order: Order;
  readonly may: boolean;
  readonly onState: (state: 'done' | 'cancelled') => void;
}) => {
  const { order, may, onState } = props;
  const t = useMessages(planMessages);
  const formats = useFormats();
  return (
    <li className="line order">
      <div className="row">
        <span className="figure-large">{formats.weekday(order.dueOn)}</span>
        <strong>{order.customerName ?? t('counter')}</strong>
        <code>{order.code}</code>
        <State tone={order.state === 'open' ? 'caution' : 'plain'}>{t(order.state)}</State>
      </div>
      <ul>
        {order.lines.map((line) => (
          <li key={line.id}>
            {formats.number(line.quantity)} × {line.itemName}{' '}
            <span className="quiet">
              {t('sent', {
                sent: formats.number(line.sentQuantity),
                quantity: formats.number(line.quantity),
              })}
            </span>
          </li>
        ))}
      </ul>
      {order.note !== null && <p className="quiet">{order.note}</p>}
      {may && order.state === 'open' && (
        <div className="row order-actions">
          <Link
            to="/out/new"
            search={{ order: order.id, customer: order.customerId ?? '' }}
            className="button-link"
          >
            {t('send')}
          </Link>
          <Button variant="default" onClick={() => onState('done')}>
            {t('close')}
          </Button>
          <Button variant="default" onClick={() => onState('cancelled')}>
            {t('cancel')}
          </Button>
        </div>
      )}
    </li>
  );
};

const Orders = () => {
  const t = useMessages(planMessages);
  const may = useMay('seller', 'maker');
  const list = useList('/api/orders');
  const [open, setOpen] = useState(false);
  const change = useChange(({ order, state }: { order: Order; state: 'done' | 'cancelled' }) =>
    must(
      api.PATCH('/api/orders/{id}', { ...byId(order.id), ...seen(order.version), body: { state } }),
    ),
  );
  return (
    <Page
      title={t('orders')}
      lead={t('ordersLead')}
      actions={may && <Button onClick={() => setOpen(true)}>{t('addOrder')}</Button>}
    >
      <OutNav />
      <ProblemNotice error={change.error} />
      <Loaded query={list.query}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="quiet">{t('noOrders')}</p>
          ) : (
            <ul className="plain-list">
              {rows.map((order) => (
                <OrderCard
                  key={order.id}
                  order={order}
                  may={may}
                  onState={(state) => change.mutate({ order, state })}
                />
              ))}
            </ul>
          )
        }
      </Loaded>
      <MoreButton onMore={list.more} />
      {open && <OrderDialog onClose={() => setOpen(false)} />}
    </Page>
  );
};

export default Orders;
