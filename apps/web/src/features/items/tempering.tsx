import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Section, State } from '../../shared/kit/page';
import { useSettled } from '../../shared/kit/use-settled';
import { TemperingDialog } from './tempering-dialog';
import { temperingMessages } from './tempering-messages';

type Curve = components['schemas']['TemperingView'];
type Step = components['schemas']['TemperingReadingDto']['step'];

const Windows = ({ curve }: { readonly curve: Curve }) => {
  const t = useMessages(temperingMessages);
  const formats = useFormats();
  return (
    <>
      <p>
        <strong>{t(curve.product)}</strong> · {curve.isMakers ? t('makers') : t('table')}{' '}
        <span className="quiet">{curve.source}</span>
      </p>
      <DataTable
        caption={t('title')}
        rows={curve.checks}
        rowKey={({ step }) => step}
        small
        columns={[
          { key: 'step', title: t('step'), cell: (row) => t(row.step), text: (row) => row.step },
          {
            key: 'window',
            title: t('window'),
            numeric: true,
            cell: (row) =>
              t('range', { low: formats.number(row.low, 1), high: formats.number(row.high, 1) }),
            text: (row) => row.low,
          },
        ]}
      />
      {curve.warmestFillingC !== null && (
        <p>
          {t('filling')}: <strong>{formats.number(curve.warmestFillingC, 1)} °C</strong>
        </p>
      )}
    </>
  );
};

const Judge = ({ curve }: { readonly curve: Curve }) => {
  const t = useMessages(temperingMessages);
  const [step, setStep] = useState<Step>('work');
  const [tempC, setTempC] = useState('');
  const settled = useSettled(tempC);
  const verdict = useQuery({
    queryKey: ['/api/items/{id}/tempering/verdict', curve, step, settled],
    enabled: settled !== '' && settled === tempC,
    queryFn: ({ signal }) =>
      must(
        api.POST('/api/items/{id}/tempering/verdict', {
          params: { path: { id: curve.itemId } },
          body: { step, tempC: settled },
          signal,
        }),
      ),
  });
  return (
    <div className="stack">
      <h3>{t('judge')}</h3>
      <OneOf
        label={t('step')}
        value={step}
        onChange={(next) => setStep(next as Step)}
        choices={curve.checks.map((check) => ({ value: check.step, label: t(check.step) }))}
      />
      <div className="narrow">
        <DecimalField label={t('reading')} unit="°C" value={tempC} onChange={setTempC} />
      </div>
      {tempC !== '' && (
        <Loaded query={verdict}>
          {(data) => (
            <p role="status">
              <State tone={data.verdict === 'in' ? 'good' : 'warn'}>{t(data.verdict)}</State>{' '}
              {data.advice} <span className="quiet">{data.source}</span>
            </p>
          )}
        </Loaded>
      )}
    </div>
  );
};

/** Windows for melting, cooling and working, and what a temperature means in them. */
export const Tempering = ({ item }: { readonly item: components['schemas']['ItemView'] }) => {
  const t = useMessages(temperingMessages);
  const may = useMay('maker');
  const [open, setOpen] = useState(false);
  const curve = useRead('/api/items/{id}/tempering', { params: { path: { id: item.id } } });
  const none = curve.error instanceof ProblemError && curve.error.problem.status === 404;
  const known = none ? undefined : curve.data;
  return (
    <Section
      title={t('title')}
      actions={
        may && (
          <Button variant="default" onClick={() => setOpen(true)}>
            {known === undefined ? t('set') : t('change')}
          </Button>
        )
      }
    >
      {none ? (
        <p className="quiet">{t('none')}</p>
      ) : (
        <Loaded query={curve}>
          {(data) => (
            <>
              <Windows curve={data} />
              <Judge curve={data} />
            </>
          )}
        </Loaded>
      )}
      {open && <TemperingDialog item={item} curve={known} onClose={() => setOpen(false)} />}
    </Section>
  );
};
