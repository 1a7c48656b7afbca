import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { Caution } from '../../shared/kit/page';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { batchMessages } from '../../shared/batches/messages';
import { partsMessages } from './parts-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';
import { batchPage } from '../../shared/batches/place-of-batch';

/** What an abandoned or a short part left to be made is the likely next share. */
const likelyShare = ({ parts }: Batch): string => {
  const missing = parts?.missingQuantity ?? '0';
  return compareExact(missing, '0') > 0 ? missing : '';
};

/** Opens another pot or go of the same making; it is booked at the first part. */
export const PartDialog = (props: { readonly batch: Batch; readonly onClose: () => void }) => {
  const { batch, onClose } = props;
  const t = useMessages(partsMessages);
  const b = useMessages(batchMessages);
  const formats = useFormats();
  const navigate = useNavigate();
  const headId = batch.parts?.headId ?? batch.id;
  const head = useRead(
    '/api/batches/{id}',
    { params: { path: { id: headId } } },
    { enabled: headId !== batch.id },
  );
  const first = headId === batch.id ? batch : head.data;
  const book = useBatchBooking({ ...batch, id: headId });
  const [share, setShare] = useState(() => likelyShare(batch));
  const [placeId, setPlaceId] = useState(batch.placeId ?? '');
  const label = t('label', {
    quantity: formats.quantity(share === '' ? '0' : share, batch.unit),
    batch: first?.code ?? batch.code,
  });
  const open = async (): Promise<void> => {
    const body = { plannedQuantity: share, ...(placeId === '' ? {} : { placeId }) };
    const done = await book('/api/batches/{id}/parts', body, label);
    if (done.kind === 'done')
      await navigate({ to: batchPage(batch.kind), params: { id: done.answer.id } });
  };
  return (
    <EditDialog
      title={t(batch.kind === 'cast' ? 'cast' : 'cook')}
      confirm={b('start')}
      onClose={onClose}
      onSave={open}
    >
      {(errors) => (
        <>
          <p>{t('lead')}</p>
          {(first?.plannedQuantity ?? null) !== null && (
            <p>
              {t('headKeeps', { own: formats.quantity(first?.plannedQuantity ?? '0', batch.unit) })}
            </p>
          )}
          {first?.draws.some(({ reversed }) => !reversed) === true && (
            <Caution>{t('headDrawn')}</Caution>
          )}
          <DecimalField
            label={t('share')}
            unit={batch.unit}
            value={share}
            onChange={setShare}
            error={errors['plannedQuantity']}
            required
          />
          <PlacePicker label={b('where')} value={placeId} onChange={setPlaceId} />
        </>
      )}
    </EditDialog>
  );
};
