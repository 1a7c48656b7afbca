import { useState } from 'react';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { kitMessages } from '../../shared/kit/messages';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { TextField, TickField } from '../../shared/kit/fields';
import { batchMessages } from '../../shared/batches/messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

/** Gives a batch up: what goes back to its lots is ticked, the rest is thrown away. */
export const AbandonDialog = ({
  batch,
  onClose,
}: {
  readonly batch: Batch;
  readonly onClose: () => void;
}) => {
  const t = useMessages(batchMessages);
  const kit = useMessages(kitMessages);
  const formats = useFormats();
  const book = useBatchBooking(batch);
  const [reason, setReason] = useState('');
  const [back, setBack] = useState<readonly string[]>([]);
  const draws = batch.draws.filter((draw) => !draw.reversed && Number(draw.quantity) > 0);
  return (
    <EditDialog
      title={t('abandonTitle', { batch: batch.code })}
      confirm={t('abandon')}
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/abandon',
          { reason, returnedDrawIds: [...back] },
          t('abandonLabel', { batch: batch.code }),
        )
      }
    >
      {(errors) => (
        <>
          <p>{t('abandonLead')}</p>
          <div className="stack-tight">
            {draws.map((draw) => (
              <TickField
                key={draw.id}
                label={`${draw.itemName} · ${draw.lotCode} · ${formats.quantity(draw.quantity, draw.unit)}`}
                checked={back.includes(draw.id)}
                onChange={(on) =>
                  setBack(on ? [...back, draw.id] : back.filter((id) => id !== draw.id))
                }
              />
            ))}
          </div>
          <TextField
            label={kit('reason')}
            value={reason}
            maxLength={500}
            onChange={setReason}
            error={errors['reason']}
            required
          />
        </>
      )}
    </EditDialog>
  );
};
