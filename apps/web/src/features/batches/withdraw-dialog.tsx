import { useState } from 'react';
import { useMessages } from '../../shared/language/catalogue';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { LongField } from '../../shared/kit/fields';
import { kitMessages } from '../../shared/kit/messages';
import { Caution } from '../../shared/kit/page';
import { correctMessages } from './correct-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

/** What was written wrongly: a reading of the batch, or the use of a tray. */
export type Wrong =
  | { readonly kind: 'reading'; readonly id: string; readonly name: string }
  | { readonly kind: 'tray'; readonly id: string; readonly name: string };

/** Marks it as wrong, with the reason: it stays to be seen and counts no more. */
export const WithdrawDialog = (props: {
  readonly batch: Batch;
  readonly wrong: Wrong;
  readonly onClose: () => void;
}) => {
  const { batch, wrong, onClose } = props;
  const t = useMessages(correctMessages);
  const kit = useMessages(kitMessages);
  const book = useBatchBooking(batch);
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const noReason = reason.trim().length < 3;
  const label = t('wrongLabel', { what: wrong.name, batch: batch.code });
  const body = { reason: reason.trim() };
  return (
    <EditDialog
      title={t('wrongTitle', { what: wrong.name })}
      confirm={t('markWrong')}
      onClose={onClose}
      ready={() => {
        setAsked(true);
        return !noReason;
      }}
      onSave={() =>
        wrong.kind === 'reading'
          ? book('/api/batches/{id}/readings/{readingId}/withdrawal', body, label, {
              readingId: wrong.id,
            })
          : book('/api/batches/{id}/mould-uses/{useId}/withdrawal', body, label, {
              useId: wrong.id,
            })
      }
    >
      {(errors) => (
        <>
          <LongField
            label={kit('reason')}
            value={reason}
            required
            onChange={setReason}
            error={errors['reason'] ?? (asked && noReason ? kit('reasonNeeded') : undefined)}
          />
          <Caution>{wrong.kind === 'reading' ? t('readingCaution') : t('trayCaution')}</Caution>
        </>
      )}
    </EditDialog>
  );
};
