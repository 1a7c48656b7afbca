import { useState } from 'react';
import type { components } from '../../api/schema';
import { unitOfMeasure } from '../../shared/formats/measures';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { batchMessages } from '../../shared/batches/messages';
import { TemperingReading, useTempering } from './tempering-reading';
import { useBatchBooking, type Batch } from './use-batch-booking';

type Due = components['schemas']['DueReadingView'];
type Measure = components['schemas']['ReadingDto']['measure'];

const MEASURES: readonly Measure[] = [
  'temp_c',
  'water_activity',
  'ph',
  'brix',
  'humidity_percent',
  'mass_g',
];

export const useLimits = () => {
  const t = useMessages(batchMessages);
  const formats = useFormats();
  return (low: string | null, high: string | null): string => {
    if (low !== null && high !== null)
      return t('limits', { low: formats.number(low), high: formats.number(high) });
    if (low !== null) return t('limitLow', { low: formats.number(low) });
    return high === null ? '' : t('limitHigh', { high: formats.number(high) });
  };
};

export const ReadingDialog = (props: {
  readonly batch: Batch;
  readonly due: Due | undefined;
  readonly onClose: () => void;
}) => {
  const { batch, due, onClose } = props;
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const limits = useLimits();
  const book = useBatchBooking(batch);
  const [measure, setMeasure] = useState<Measure>(
    (due?.measure as Measure | undefined) ?? 'temp_c',
  );
  const [value, setValue] = useState('');
  const [corrective, setCorrective] = useState('');
  const [instrument, setInstrument] = useState('');
  const tempering = useTempering(batch, due);
  const step = due?.step ?? (measure === 'temp_c' ? tempering.asStep : undefined);
  return (
    <EditDialog
      title={due === undefined ? t('takeReading') : due.step}
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/readings',
          {
            measure,
            value,
            ...(step === undefined ? {} : { step }),
            ...(corrective === '' ? {} : { correctiveAction: corrective }),
            ...(instrument === '' ? {} : { instrument }),
          },
          t('readingLabel', { value: `${value} ${unitOfMeasure(measure)}`, batch: batch.code }),
        )
      }
    >
      {(errors) => (
        <>
          {due === undefined && (
            <ChoiceField
              label={t('measure')}
              value={measure}
              onChange={(next) => setMeasure(next as Measure)}
              choices={MEASURES.map((one) => ({ value: one, label: word(one) }))}
            />
          )}
          <DecimalField
            label={word(measure)}
            unit={unitOfMeasure(measure)}
            hint={due === undefined ? undefined : limits(due.low, due.high)}
            value={value}
            onChange={setValue}
            error={errors['value']}
            required
          />
          {measure === 'temp_c' && <TemperingReading tempering={tempering} tempC={value} />}
          <TextField
            label={t('instrument')}
            value={instrument}
            onChange={setInstrument}
            error={errors['instrument']}
          />
          <TextField
            label={t('corrective')}
            value={corrective}
            onChange={setCorrective}
            error={errors['correctiveAction']}
          />
        </>
      )}
    </EditDialog>
  );
};
