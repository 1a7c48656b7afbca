import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMessages } from '../../shared/language/catalogue';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { TextField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { batchMessages } from '../../shared/batches/messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

const Proposal = (props: { readonly id: string; readonly boxes: number }) => {
  const t = useMessages(batchMessages);
  const { id, boxes } = props;
  const split = useRead('/api/batches/{id}/split', { params: { path: { id }, query: { boxes } } });
  return (
    <Loaded query={split}>
      {({ runs }) =>
        runs.length < 2 ? (
          <p>{t('oneRun')}</p>
        ) : (
          <ol>
            {runs.map((run) => (
              <li key={run.firstBox}>
                {t('run', {
                  first: run.firstBox,
                  last: run.lastBox,
                  lots: run.lotCodes.join(', '),
                })}
              </li>
            ))}
          </ol>
        )
      }
    </Loaded>
  );
};

/** Splits a packing where the lot of a piece changed, so that a recall stays small. */
export const SplitDialog = ({
  batch,
  onClose,
}: {
  readonly batch: Batch;
  readonly onClose: () => void;
}) => {
  const t = useMessages(batchMessages);
  const book = useBatchBooking(batch);
  const [boxes, setBoxes] = useState(batch.plannedQuantity?.split('.')[0] ?? '');
  return (
    <EditDialog
      title={t('split')}
      confirm={t('split')}
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/split',
          { boxes: Number(boxes) },
          t('splitLabel', { batch: batch.code }),
        )
      }
    >
      {(errors) => (
        <>
          <p>{t('splitLead')}</p>
          <TextField
            label={t('boxes')}
            value={boxes}
            onChange={(text) => setBoxes(text.replace(/\D/g, ''))}
            error={errors['boxes']}
            required
          />
          {Number(boxes) > 0 && <Proposal id={batch.id} boxes={Number(boxes)} />}
        </>
      )}
    </EditDialog>
  );
};
