import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { byId } from '../../api/seen';
import { useChange } from '../../api/use-api';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { kitMessages } from '../../shared/kit/messages';
import { ItemPicker, useItems } from '../../shared/pickers/item-picker';
import { SupplierPicker } from '../../shared/pickers/party-pickers';
import { buyingMessages } from './buying-messages';

/** From whom a thing is bought, in what packs, and how long it takes. */
export const SupplyTermDialog = (props: {
  /** Empty: the thing is chosen here. */
  readonly itemId: string;
  readonly term: components['schemas']['SupplyTermView'] | undefined;
  readonly onClose: () => void;
}) => {
  const { term, onClose } = props;
  const t = useMessages(buyingMessages);
  const kit = useMessages(kitMessages);
  const items = useItems().rows;
  const [itemId, setItemId] = useState(props.itemId);
  const [supplierId, setSupplierId] = useState(term?.supplierId ?? '');
  const [leadDays, setLeadDays] = useState(term === undefined ? '' : String(term.leadDays));
  const [pack, setPack] = useState(term?.packQuantity ?? '');
  const [asked, setAsked] = useState(false);
  const item = items.find(({ id }) => id === itemId);
  const change = useChange(() =>
    must(
      api.PUT('/api/items/{id}/supply-term', {
        ...byId(itemId),
        body: {
          supplierId,
          leadDays: Number(leadDays),
          packQuantity: pack === '' ? null : pack,
        },
      }),
    ),
  );
  const missing = (value: string): string | undefined =>
    asked && value === '' ? kit('required') : undefined;
  return (
    <EditDialog
      title={item === undefined ? t('termNew') : t('termOf', { name: item.name })}
      onClose={onClose}
      ready={() => {
        setAsked(true);
        return itemId !== '' && supplierId !== '' && leadDays !== '';
      }}
      onSave={() => change.mutateAsync(undefined)}
    >
      {(errors) => (
        <>
          {props.itemId === '' && (
            <ItemPicker
              label={t('item')}
              kinds={['ingredient', 'packaging']}
              value={itemId}
              onChange={setItemId}
              error={missing(itemId)}
              required
            />
          )}
          <SupplierPicker
            label={t('supplier')}
            value={supplierId}
            onChange={setSupplierId}
            error={errors['supplierId'] ?? missing(supplierId)}
            required
          />
          <DecimalField
            label={t('leadTime')}
            unit={t('daysUnit')}
            value={leadDays}
            onChange={setLeadDays}
            error={errors['leadDays'] ?? missing(leadDays)}
            required
          />
          <DecimalField
            label={t('pack')}
            unit={item?.unit ?? 'g'}
            hint={t('packHint')}
            value={pack}
            onChange={setPack}
            error={errors['packQuantity']}
          />
        </>
      )}
    </EditDialog>
  );
};
