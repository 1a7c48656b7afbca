import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section } from '../../shared/kit/page';
import { type Item, useItems } from '../../shared/pickers/item-picker';
import { GoodsInNav } from '../../shared/rooms/goods-in-nav';
import { buyingMessages } from './buying-messages';
import { LeastOrders } from './least-orders';
import { SupplyTermDialog } from './supply-term-dialog';

type Term = components['schemas']['SupplyTermView'];

const isBought = ({ kind, active }: Item): boolean =>
  active && (kind === 'ingredient' || kind === 'packaging');

const Terms = (props: {
  readonly terms: readonly Term[];
  readonly unitOf: (itemId: string) => string;
  readonly onChange: ((itemId: string) => void) | undefined;
}) => {
  const { terms, unitOf, onChange } = props;
  const t = useMessages(buyingMessages);
  const formats = useFormats();
  return (
    <DataTable
      caption={t('terms')}
      rows={terms}
      rowKey={({ itemId }) => itemId}
      csvName="supply-terms"
      empty={t('none')}
      columns={[
        {
          key: 'item',
          title: t('item'),
          cell: (row) => <strong>{row.itemName}</strong>,
          text: (row) => row.itemName,
        },
        {
          key: 'supplier',
          title: t('supplier'),
          cell: (row) => row.supplierName,
          text: (row) => row.supplierName,
        },
        {
          key: 'lead',
          title: t('leadTime'),
          cell: (row) => t('days', { count: row.leadDays }),
          text: (row) => String(row.leadDays),
        },
        {
          key: 'pack',
          title: t('pack'),
          cell: (row) =>
            row.packQuantity === null
              ? t('anyQuantity')
              : formats.quantity(row.packQuantity, unitOf(row.itemId)),
          text: (row) => row.packQuantity ?? '',
        },
        ...(onChange === undefined
          ? []
          : [
              {
                key: 'change',
                title: '',
                cell: (row: Term) => (
                  <Button
                    variant="default"
                    aria-label={t('changeOf', { name: row.itemName })}
                    onClick={() => onChange(row.itemId)}
                  >
                    {t('change')}
                  </Button>
                ),
                text: () => '',
              },
            ]),
      ]}
    />
  );
};

/** Things that are bought and have no terms yet, so that nobody believes the plan knows them. */
const Unwritten = (props: {
  readonly items: readonly Item[];
  readonly onWrite: ((itemId: string) => void) | undefined;
}) => {
  const { items, onWrite } = props;
  const t = useMessages(buyingMessages);
  if (items.length === 0) return null;
  return (
    <Section title={t('unwritten')}>
      <p className="quiet text">{t('unwrittenLead')}</p>
      <ul className="plain-list row">
        {items.map(({ id, name }) => (
          <li key={id}>
            {onWrite === undefined ? (
              name
            ) : (
              <Button
                variant="default"
                aria-label={t('writeOf', { name })}
                onClick={() => onWrite(id)}
              >
                {name}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
};

/** From whom things are bought, in what packs, and how long they take to come. */
const Buying = () => {
  const t = useMessages(buyingMessages);
  const may = useMay('maker');
  const terms = useRead('/api/supply-terms');
  const items = useItems().rows;
  const [open, setOpen] = useState<string>();
  const written = new Set((terms.data ?? []).map(({ itemId }) => itemId));
  const onOpen = may ? setOpen : undefined;
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={may && <Button onClick={() => setOpen('')}>{t('add')}</Button>}
    >
      <GoodsInNav />
      <Loaded query={terms}>
        {(rows) => (
          <>
            <Section title={t('terms')}>
              <Terms
                terms={rows}
                unitOf={(itemId) => items.find(({ id }) => id === itemId)?.unit ?? ''}
                onChange={onOpen}
              />
            </Section>
            <Unwritten
              items={items.filter((item) => isBought(item) && !written.has(item.id))}
              onWrite={onOpen}
            />
            <LeastOrders />
            {open !== undefined && (
              <SupplyTermDialog
                itemId={open}
                term={rows.find(({ itemId }) => itemId === open)}
                onClose={() => setOpen(undefined)}
              />
            )}
          </>
        )}
      </Loaded>
    </Page>
  );
};

export default Buying;
