import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { type Item, useItems } from '../../shared/pickers/item-picker';
import { GoodsInNav } from '../../shared/rooms/goods-in-nav';
import { ItemDialog } from '../../shared/items/item-dialog';
import { itemMessages } from '../../shared/items/messages';

const BOUGHT = ['ingredient', 'packaging'] as const;

const ItemTable = (props: {
  readonly items: readonly Item[];
  readonly onChange: ((item: Item) => void) | undefined;
}) => {
  const { onChange } = props;
  const t = useMessages(itemMessages);
  const word = useServiceWords();
  const formats = useFormats();
  return (
    <DataTable
      caption={t('title')}
      rows={props.items}
      rowKey={({ id }) => id}
      csvName="items"
      empty={t('none')}
      columns={[
        {
          key: 'name',
          title: t('name'),
          cell: (item) => (
            <Link to="/goods-in/items/$id" params={{ id: item.id }}>
              {item.name}
            </Link>
          ),
          text: (item) => item.name,
        },
        {
          key: 'kind',
          title: t('kind'),
          cell: (item) => word(item.kind),
          text: (item) => item.kind,
        },
        {
          key: 'price',
          title: t('replacementShort'),
          numeric: true,
          cell: (item) =>
            item.replacementPrice !== null &&
            t(item.unit === 'g' ? 'perKg' : 'perPiece', {
              price: formats.money(item.replacementPrice),
            }),
          text: (item) => item.replacementPrice ?? '',
        },
        {
          key: 'storage',
          title: t('storage'),
          wide: true,
          cell: (item) => item.storageConditions,
          text: (item) => item.storageConditions ?? '',
        },
        {
          key: 'change',
          title: '',
          cell: (item) =>
            onChange !== undefined && (
              <Button
                variant="default"
                aria-label={t('changeOf', { name: item.name })}
                onClick={() => onChange(item)}
              >
                {t('change')}
              </Button>
            ),
          text: () => '',
        },
      ]}
    />
  );
};

const Items = () => {
  const t = useMessages(itemMessages);
  const may = useMay('maker');
  const list = useItems();
  const [open, setOpen] = useState<Item | 'new'>();
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={may && <Button onClick={() => setOpen('new')}>{t('add')}</Button>}
    >
      <GoodsInNav />
      <Loaded query={list.query}>
        {(rows) => (
          <ItemTable
            items={rows.filter(({ kind }) => (BOUGHT as readonly string[]).includes(kind))}
            onChange={may ? setOpen : undefined}
          />
        )}
      </Loaded>
      {open !== undefined && (
        <ItemDialog
          item={open === 'new' ? undefined : open}
          kinds={BOUGHT}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
};

export default Items;
