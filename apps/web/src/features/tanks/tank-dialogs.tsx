import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { useBooking } from '../../api/use-api';
import { type Row, useList } from '../../api/use-list';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { OneOf, TextField, TickField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { ItemPicker } from '../../shared/pickers/item-picker';
import { tankMessages } from './messages';

export type Tank = Row<'/api/tanks'>;

interface Props {
  readonly tank: Tank;
  readonly onClose: () => void;
}

export const AddTankDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(tankMessages);
  const queries = useQueryClient();
  const [name, setName] = useState('');
  const [itemId, setItemId] = useState('');
  const [capacityGrams, setCapacity] = useState('');
  return (
    <EditDialog
      title={t('add')}
      onClose={onClose}
      onSave={async () => {
        await must(api.POST('/api/tanks', { body: { name, itemId, capacityGrams } }));
        await queries.invalidateQueries();
      }}
    >
      {(errors) => (
        <>
          <TextField
            label={t('name')}
            value={name}
            onChange={setName}
            error={errors['name']}
            required
          />
          <ItemPicker
            label={t('holds')}
            kinds={['ingredient']}
            value={itemId}
            onChange={setItemId}
            error={errors['itemId']}
            required
          />
          <DecimalField
            label={t('capacity')}
            unit="g"
            value={capacityGrams}
            onChange={setCapacity}
            error={errors['capacityGrams']}
            required
          />
        </>
      )}
    </EditDialog>
  );
};

/** Adds a lot to the heel; the service makes the tank's next lot of both. */
export const TopUpDialog = ({ tank, onClose }: Props) => {
  const t = useMessages(tankMessages);
  const formats = useFormats();
  const book = useBooking();
  const lots = useList('/api/lots', { item: tank.itemId, state: 'on_hand' }).rows.filter(
    (lot) => lot.code !== tank.currentLot?.lotCode && !lot.onHold,
  );
  const [typed, setTyped] = useState('');
  const [quantity, setQuantity] = useState('');
  const [rework, setRework] = useState(false);
  const lotCode = typed === '' ? (lots[0]?.code ?? '') : typed;
  return (
    <EditDialog
      title={t('topUpTitle', { tank: tank.name })}
      confirm={t('topUp')}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/tanks/{id}/charges',
          at: { id: tank.id },
          body: { lots: [{ lotCode, quantity, ...(rework ? { rework } : {}) }] },
          label: t('topUpLabel', { tank: tank.name }),
          lane: `tank-${tank.id}`,
        })
      }
    >
      {(errors) => (
        <>
          <p>{t('topUpLead')}</p>
          <OneOf
            label={t('lot')}
            value={lotCode}
            onChange={setTyped}
            choices={lots.slice(0, 6).map((lot) => ({
              value: lot.code,
              label: `${lot.code} · ${formats.quantity(lot.onHandQuantity, lot.unit)}`,
            }))}
          />
          <TextField
            label={t('code')}
            value={typed}
            onChange={setTyped}
            error={errors['lots.0.lotCode']}
          />
          <DecimalField
            label={t('quantity')}
            unit="g"
            weigh
            value={quantity}
            onChange={setQuantity}
            error={errors['lots.0.quantity']}
            required
          />
          <TickField label={t('isRework')} checked={rework} onChange={setRework} />
        </>
      )}
    </EditDialog>
  );
};

export const EmptyDialog = ({ tank, onClose }: Props) => {
  const t = useMessages(tankMessages);
  const book = useBooking();
  const [outcome, setOutcome] = useState<'wasted' | 'kept'>('wasted');
  const [cleaned, setCleaned] = useState(true);
  const [note, setNote] = useState('');
  return (
    <EditDialog
      title={t('emptyTitle', { tank: tank.name })}
      confirm={t('empty')}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/tanks/{id}/emptyings',
          at: { id: tank.id },
          body: { outcome, cleaned, note: note === '' ? null : note },
          label: t('emptyLabel', { tank: tank.name }),
          lane: `tank-${tank.id}`,
        })
      }
    >
      {(errors) => (
        <>
          <OneOf
            label={t('outcome')}
            value={outcome}
            onChange={(next) => setOutcome(next as 'wasted' | 'kept')}
            choices={[
              { value: 'wasted', label: t('wasted') },
              { value: 'kept', label: t('kept') },
            ]}
          />
          <TickField label={t('cleaned')} checked={cleaned} onChange={setCleaned} />
          {!cleaned && <Caution>{t('cleanedWhy')}</Caution>}
          <TextField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
        </>
      )}
    </EditDialog>
  );
};
