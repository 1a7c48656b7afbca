import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useMay } from '../../app/session';
import { unitOfMeasure } from '../../shared/formats/measures';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Section, State } from '../../shared/kit/page';
import { batchMessages } from '../../shared/batches/messages';
import { correctMessages } from './correct-messages';
import { ReadingDialog, useLimits } from './reading-dialog';
import type { Batch } from './use-batch-booking';
import { WithdrawDialog, type Wrong } from './withdraw-dialog';

type Due = components['schemas']['DueReadingView'];

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
