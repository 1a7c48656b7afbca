import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { type TemperingStep, TemperingVerdict } from '../../shared/readings/tempering-verdict';
import { TemperingDialog } from './tempering-dialog';
import { temperingMessages } from '../../shared/readings/tempering-messages';

type Curve = components['schemas']['TemperingView'];

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
          {formats.label(t('filling'))}{' '}
          <strong>{formats.number(curve.warmestFillingC, 1)} °C</strong>
        </p>
      )}
    </>
  );
};

const Judge = ({ curve }: { readonly curve: Curve }) => {
  const t = useMessages(temperingMessages);
  const [step, setStep] = useState<TemperingStep>('work');
  const [tempC, setTempC] = useState('');
  return (
    <div className="stack">
      <h3>{t('judge')}</h3>
      <OneOf
        label={t('step')}
        value={step}
        onChange={(next) => setStep(next as TemperingStep)}
        choices={curve.checks.map((check) => ({ value: check.step, label: t(check.step) }))}
      />
      <div className="narrow">
        <DecimalField label={t('reading')} unit="°C" value={tempC} onChange={setTempC} />
      </div>
      <TemperingVerdict itemId={curve.itemId} step={step} tempC={tempC} />
    </div>
  );
};

/** Windows for melting, cooling and working, and what a temperature means in them. */
export const Tempering = ({ item }: { readonly item: components['schemas']['ItemView'] }) => {
  const t = useMessages(temperingMessages);
  const may = useMay('maker');
  const [open, setOpen] = useState(false);
  const curves = useRead('/api/tempering/curves');
  const known = curves.data?.find(({ itemId }) => itemId === item.id);
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
      <Loaded query={curves}>
        {() =>
          known === undefined ? (
            <p className="quiet">{t('none')}</p>
          ) : (
            <>
              <Windows curve={known} />
              <Judge curve={known} />
            </>
          )
        }
      </Loaded>
      {open && <TemperingDialog item={item} curve={known} onClose={() => setOpen(false)} />}
    </Section>
  );
};
