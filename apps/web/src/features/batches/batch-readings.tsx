import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useMay } from '../../app/session';
import { unitOfMeasure } from '../../shared/formats/measures';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { Section, State } from '../../shared/kit/page';
import { batchMessages } from '../../shared/batches/messages';
import { correctMessages } from './correct-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';
import { WithdrawDialog, type Wrong } from './withdraw-dialog';

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

const ReadingDialog = (props: {
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
            ...(due === undefined ? {} : { step: due.step }),
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

/** Check points that are due, and the readings that were written. */
export const BatchReadings = (props: { readonly batch: Batch; readonly mayBook: boolean }) => {
  const { batch, mayBook } = props;
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const limits = useLimits();
  const c = useMessages(correctMessages);
  const mayWithdraw = useMay('maker', 'seller');
  const [open, setOpen] = useState<Due | 'free'>();
  const [wrong, setWrong] = useState<Wrong>();
  return (
    <Section
      title={t('readings')}
      actions={
        mayBook && (
          <Button variant="default" onClick={() => setOpen('free')}>
            {t('takeReading')}
          </Button>
        )
      }
    >
      {batch.readingsDue.map((due) => (
        <div key={`${due.step}-${due.measure}`} className="row line">
          <State tone="caution">{t('readingsDue')}</State>
          <strong>{due.step}</strong> {word(due.measure)} {limits(due.low, due.high)}
          {mayBook && <Button onClick={() => setOpen(due)}>{t('takeReading')}</Button>}
        </div>
      ))}
      {batch.readings.length + batch.readingsDue.length === 0 && (
        <p className="quiet">{t('noReadings')}</p>
      )}
      {batch.readings.length > 0 && (
        <DataTable
          caption={t('readings')}
          rows={batch.readings}
          rowKey={({ id }) => id}
          csvName={`readings-${batch.code}`}
          columns={[
            {
              key: 'step',
              title: t('step'),
              cell: (row) => row.step,
              text: (row) => row.step ?? '',
            },
            {
              key: 'measure',
              title: t('measure'),
              cell: (row) => word(row.measure),
              text: (row) => row.measure,
            },
            {
              key: 'value',
              title: t('value'),
              numeric: true,
              cell: (row) => `${formats.number(row.value)} ${unitOfMeasure(row.measure)}`,
              text: (row) => row.value,
            },
            {
              key: 'verdict',
              title: t('state'),
              cell: (row) => (
                <State
                  tone={
                    row.verdict === 'in' ? 'good' : row.verdict === 'no_limit' ? 'plain' : 'warn'
                  }
                >
                  {word(row.verdict)}
                </State>
              ),
              text: (row) => row.verdict,
            },
            {
              key: 'done',
              title: t('corrective'),
              cell: (row) => row.correctiveAction,
              text: (row) => row.correctiveAction ?? '',
            },
            {
              key: 'wrong',
              title: c('markWrong'),
              cell: (row) => {
                if (row.withdrawnBecause !== null) {
                  return <em>{c('isWrong', { reason: row.withdrawnBecause })}</em>;
                }
                if (!mayWithdraw) return null;
                const name = `${word(row.measure)} ${formats.number(row.value)}`;
                return (
                  <Button
                    variant="default"
                    aria-label={c('markWrongOf', { what: name })}
                    onClick={() => setWrong({ kind: 'reading', id: row.id, name })}
                  >
                    {c('markWrong')}
                  </Button>
                );
              },
              text: (row) => row.withdrawnBecause ?? '',
            },
          ]}
        />
      )}
      {wrong !== undefined && (
        <WithdrawDialog batch={batch} wrong={wrong} onClose={() => setWrong(undefined)} />
      )}
      {open !== undefined && (
        <ReadingDialog
          batch={batch}
          due={open === 'free' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Section>
  );
};
