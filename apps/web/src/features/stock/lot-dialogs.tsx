import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { OneOf, TextField } from '../../shared/kit/fields';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { RoomCheckHere } from '../../shared/readings/room-check-here';
import { stockMessages } from '../../shared/lots/messages';

type Lot = components['schemas']['LotView'];
type Adjustment = components['schemas']['AdjustmentDto']['kind'];

interface Props {
  readonly lot: Lot;
  readonly onClose: () => void;
}

/** Counts, throws away or samples; the difference is booked with its reason. */
export const AdjustDialog = ({ lot, onClose }: Props) => {
  const t = useMessages(stockMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const book = useBooking();
  const [kind, setKind] = useState<Adjustment>('counted');
  const [quantity, setQuantity] = useState('');
  const [reason, setReason] = useState('');
  const { code } = lot;
  return (
    <EditDialog
      title={t('adjustTitle', { code })}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/lots/{code}/adjustments',
          at: { code },
          body: { kind, quantity, reason },
          label: t('adjustLabel', {
            kind: word(kind),
            quantity: formats.quantity(quantity, lot.unit),
            code,
          }),
          lane: `lot-${code}`,
        })
      }
    >
      {(errors) => (
        <>
          <p>
            {formats.label(lot.itemName)} {formats.quantity(lot.onHandQuantity, lot.unit)}
          </p>
          <OneOf
            label={t('what')}
            value={kind}
            onChange={(next) => setKind(next as Adjustment)}
            choices={[
              { value: 'counted', label: t('kindCounted') },
              { value: 'wasted', label: t('kindWasted') },
              { value: 'sampled', label: t('kindSampled') },
            ]}
          />
          <DecimalField
            label={t('quantity')}
            unit={lot.unit}
            weigh={lot.unit === 'g'}
            value={quantity}
            onChange={setQuantity}
            error={errors['quantity']}
            required
          />
          <TextField
            label={t('reason')}
            value={reason}
            onChange={setReason}
            error={errors['reason']}
            required
          />
        </>
      )}
    </EditDialog>
  );
};

export const MoveDialog = ({ lot, onClose }: Props) => {
  const t = useMessages(stockMessages);
  const book = useBooking();
  const [placeId, setPlaceId] = useState(lot.placeId ?? '');
  const { code } = lot;
  return (
    <EditDialog
      title={t('moveTitle', { code })}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/lots/{code}/place',
          at: { code },
          body: { placeId },
          label: t('moveLabel', { code }),
          lane: `lot-${code}`,
        })
      }
    >
      {(errors) => (
        <>
          <PlacePicker value={placeId} onChange={setPlaceId} error={errors['placeId']} required />
          <RoomCheckHere />
        </>
      )}
    </EditDialog>
  );
};
