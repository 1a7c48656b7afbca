import { Button } from '@mantine/core';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { byId } from '../../api/seen';
import { useChange, useRead } from '../../api/use-api';
import { type Row, useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { type Column, DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { buyingMessages } from './buying-messages';

type Supplier = Row<'/api/suppliers'>;

const LeastOrderDialog = (props: {
  readonly supplier: Supplier;
  readonly amount: string | undefined;
  readonly onClose: () => void;
}) => {
  const { supplier, onClose } = props;
  const t = useMessages(buyingMessages);
  const formats = useFormats();
  const [amount, setAmount] = useState(props.amount ?? '');
  const change = useChange(() =>
    must(api.PUT('/api/suppliers/{id}/minimum-order', { ...byId(supplier.id), body: { amount } })),
  );
  return (
    <EditDialog
      title={t('minimumOf', { name: supplier.name })}
      onClose={onClose}
      onSave={() => change.mutateAsync(undefined)}
    >
      {(errors) => (
        <DecimalField
          label={t('amount')}
          unit={formats.currency}
          value={amount}
          onChange={setAmount}
          error={errors['amount']}
          required
        />
      )}
    </EditDialog>
  );
};

/** What an order has to come to before a supplier delivers. */
export const LeastOrders = () => {
  const t = useMessages(buyingMessages);
  const formats = useFormats();
  const may = useMay('maker');
  const minimums = useRead('/api/minimum-orders');
  const suppliers = useList('/api/suppliers');
  const [open, setOpen] = useState<Supplier>();
  const amountOf = (id: string): string | undefined =>
    minimums.data?.find(({ supplierId }) => supplierId === id)?.amount;
  const shown = (amount: string | undefined): string =>
    amount === undefined ? t('noMinimum') : formats.money(amount);
  const changeColumn: Column<Supplier> = {
    key: 'change',
    title: '',
    cell: (row) => (
      <Button
        variant="default"
        aria-label={t('changeOf', { name: row.name })}
        onClick={() => setOpen(row)}
      >
        {t('change')}
      </Button>
    ),
    text: () => '',
  };
  return (
    <Section title={t('minimums')}>
      <p className="quiet text">{t('minimumsLead')}</p>
      <Loaded query={suppliers.query}>
        {(rows) => (
          <DataTable
            caption={t('minimums')}
            rows={rows.filter(({ active }) => active)}
            rowKey={({ id }) => id}
            csvName="least-orders"
            small
            columns={[
              {
                key: 'supplier',
                title: t('supplier'),
                cell: (row) => row.name,
                text: (row) => row.name,
              },
              {
                key: 'amount',
                title: t('amount'),
                numeric: true,
                cell: ({ id }) => shown(amountOf(id)),
                text: ({ id }) => amountOf(id) ?? '',
              },
              ...(may ? [changeColumn] : []),
            ]}
          />
        )}
      </Loaded>
      {open !== undefined && (
        <LeastOrderDialog
          supplier={open}
          amount={amountOf(open.id)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Section>
  );
};
