import { useState } from 'react';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, TextField, TickField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { ItemPicker, useItems } from '../../shared/pickers/item-picker';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { LOSS_KINDS } from './batch-losses';
import { finishBody, goodPieces, rejectedPieces, restOf, type FinishForm } from './finish-form';
import { batchMessages } from '../../shared/batches/messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

interface PartProps {
  readonly batch: Batch;
  readonly form: FinishForm;
  readonly put: (change: Partial<FinishForm>) => void;
  readonly errors: Readonly<Record<string, string>>;
}

const startOf = (batch: Batch): FinishForm => ({
  quantity: batch.kind === 'cast' && batch.mouldUses.length > 0 ? String(goodPieces(batch)) : '',
  mass: '',
  placeId: batch.placeId ?? '',
  reworkItemId: '',
  reworkMass: '',
  rejectPieces: batch.kind === 'cast' ? String(rejectedPieces(batch)) : '',
  restKind: '',
  minutes: '',
  imbalanceReason: '',
  keepTogether: false,
});

const CameOut = ({ batch, form, put, errors }: PartProps) => {
  const t = useMessages(batchMessages);
  return (
    <>
      <DecimalField
        label={t('cameOut')}
        unit={batch.unit}
        weigh={batch.unit === 'g'}
        value={form.quantity}
        onChange={(quantity) => put({ quantity })}
        error={errors['outputs.0.quantity']}
        required
      />
      {batch.unit === 'pc' && (
        <DecimalField
          label={t('cameOutMass')}
          unit="g"
          weigh
          value={form.mass}
          onChange={(mass) => put({ mass })}
          error={errors['outputs.0.massGrams']}
        />
      )}
      <PlacePicker
        label={t('putAway')}
        value={form.placeId}
        onChange={(placeId) => put({ placeId })}
      />
    </>
  );
};

const Rest = ({ batch, form, put, errors }: PartProps) => {
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const rest = restOf(batch, form);
  return (
    <>
      {batch.kind === 'cast' && (
        <TextField
          label={t('rejectPieces')}
          value={form.rejectPieces}
          onChange={(text) => put({ rejectPieces: text.replace(/\D/g, '') })}
          error={errors['losses']}
        />
      )}
      {compareExact(rest, '0') > 0 && (
        <ChoiceField
          label={`${formats.label(formats.mass(rest))} ${t('restAs')}`}
          value={form.restKind}
          empty="–"
          onChange={(kind) => put({ restKind: kind as FinishForm['restKind'] })}
          choices={LOSS_KINDS.map((kind) => ({ value: kind, label: word(kind) }))}
        />
      )}
      {compareExact(rest, '0') < 0 && (
        <TextField
          label={t('imbalance')}
          value={form.imbalanceReason}
          onChange={(imbalanceReason) => put({ imbalanceReason })}
          error={errors['imbalanceReason']}
        />
      )}
      {batch.kind !== 'pack' && (
        <details>
          <summary className="why-mark">{t('rework')}</summary>
          <div className="columns">
            <ItemPicker
              label={t('reworkItem')}
              kinds={['ingredient', 'filling']}
              value={form.reworkItemId}
              onChange={(reworkItemId) => put({ reworkItemId })}
            />
            <DecimalField
              label={t('reworkQuantity')}
              unit="g"
              weigh
              value={form.reworkMass}
              onChange={(reworkMass) => put({ reworkMass })}
            />
          </div>
        </details>
      )}
      {batch.kind === 'pack' && (
        <>
          <TickField
            label={t('keepTogether')}
            checked={form.keepTogether}
            onChange={(keepTogether) => put({ keepTogether })}
          />
          {form.keepTogether && <Caution>{t('keepCaution')}</Caution>}
        </>
      )}
    </>
  );
};

/** Finishes a batch: what came out, what the rest was, how long it took. */
export const FinishDialog = ({
  batch,
  onClose,
}: {
  readonly batch: Batch;
  readonly onClose: () => void;
}) => {
  const t = useMessages(batchMessages);
  const book = useBatchBooking(batch);
  const [form, setForm] = useState(() => startOf(batch));
  const put = (change: Partial<FinishForm>): void => setForm((now) => ({ ...now, ...change }));
  const reworkUnit = useItems().rows.find(({ id }) => id === form.reworkItemId)?.unit ?? 'g';
  return (
    <EditDialog
      title={t('finishTitle', { batch: batch.code })}
      confirm={t('finish')}
      size="lg"
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/finish',
          finishBody(batch, form, reworkUnit),
          t('finishLabel', { batch: batch.code }),
        )
      }
    >
      {(errors) => (
        <>
          <CameOut batch={batch} form={form} put={put} errors={errors} />
          <Rest batch={batch} form={form} put={put} errors={errors} />
          <DecimalField
            label={t('minutes')}
            unit="min"
            value={form.minutes}
            onChange={(minutes) => put({ minutes })}
            error={errors['labourMinutes']}
          />
        </>
      )}
    </EditDialog>
  );
};
