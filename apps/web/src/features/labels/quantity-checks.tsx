import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { LongField, TickField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Section, State } from '../../shared/kit/page';
import { readWeights } from './pack-weights';
import { quantityMessages } from './quantity-messages';

type Lot = components['schemas']['LotView'];
type Check = components['schemas']['QuantityCheckView'];

const tones = {
  accepted: 'good',
  rejected: 'warn',
  weigh_more: 'caution',
  not_judged: 'caution',
} as const;

const WeighDialog = (props: { readonly lot: Lot; readonly onClose: () => void }) => {
  const { code, itemId, madeQuantity } = props.lot;
  const t = useMessages(quantityMessages);
  const formats = useFormats();
  const book = useBooking();
  const item = useRead('/api/items/{id}', { params: { path: { id: itemId } } }).data;
  const [nominal, setNominal] = useState<string>();
  const [size, setSize] = useState(String(Math.round(Number(madeQuantity))));
  const [text, setText] = useState('');
  const [destructive, setDestructive] = useState(false);
  const [asked, setAsked] = useState(false);
  const { weights, unread } = readWeights(text, formats.parse);
  const nominalGrams = nominal ?? item?.nominalMassGrams ?? '';
  const wrong = (): string | undefined => {
    if (unread.length > 0) return t('unread', { text: unread.join(' ') });
    return asked && weights.length === 0 ? t('noWeights') : undefined;
  };
  return (
    <EditDialog
      title={t('weigh')}
      onClose={props.onClose}
      ready={() => {
        setAsked(true);
        return unread.length === 0 && weights.length > 0;
      }}
      onSave={() =>
        book({
          path: '/api/lots/{code}/quantity-checks',
          at: { code },
          body: {
            nominalGrams,
            batchSize: Number(size),
            destructive,
            netWeightsGrams: [...weights],
          },
          label: t('label', { code }),
          lane: `lot-${code}`,
        })
      }
    >
      {(errors) => (
        <>
          <DecimalField
            label={t('nominal')}
            unit="g"
            value={nominalGrams}
            onChange={setNominal}
            error={errors['nominalGrams']}
            required
          />
          <DecimalField
            label={t('batchSize')}
            unit="pc"
            value={size}
            onChange={setSize}
            error={errors['batchSize']}
            required
          />
          <LongField
            label={t('weights')}
            hint={t('weightsHint')}
            value={text}
            onChange={setText}
            error={wrong() ?? errors['netWeightsGrams']}
            required
          />
          <TickField label={t('destructive')} checked={destructive} onChange={setDestructive} />
        </>
      )}
    </EditDialog>
  );
};

const Checks = ({ checks, code }: { readonly checks: readonly Check[]; readonly code: string }) => {
  const t = useMessages(quantityMessages);
  const formats = useFormats();
  const verdict = (check: Check): string =>
    check.state === 'weigh_more' ? t('weigh_more', { count: check.more }) : t(check.state);
  const mass = (grams: string | null): string => (grams === null ? '–' : formats.mass(grams));
  return (
    <DataTable
      caption={t('title')}
      rows={checks}
      rowKey={({ id }) => id}
      csvName={`weighings-${code}`}
      empty={t('none')}
      columns={[
        {
          key: 'at',
          title: t('at'),
          tight: true,
          cell: (row) => formats.instant(row.at),
          text: (row) => row.at,
        },
        {
          key: 'state',
          title: t('verdict'),
          cell: (row) => <State tone={tones[row.state]}>{verdict(row)}</State>,
          text: (row) => row.state,
        },
        {
          key: 'weighed',
          title: t('weighed'),
          numeric: true,
          cell: (row) => row.weighed,
          text: (row) => String(row.weighed),
        },
        {
          key: 'mean',
          title: t('mean'),
          numeric: true,
          cell: (row) => mass(row.meanGrams),
          text: (row) => row.meanGrams ?? '',
        },
        {
          key: 'deviation',
          title: t('deviation'),
          numeric: true,
          cell: (row) => mass(row.deviationGrams),
          text: (row) => row.deviationGrams ?? '',
        },
        {
          key: 'below',
          title: t('below'),
          numeric: true,
          cell: (row) => `${String(row.belowT1)}, ${String(row.belowT2)}`,
          text: (row) => `${String(row.belowT1)} ${String(row.belowT2)}`,
        },
        {
          key: 'reasons',
          title: t('reasons'),
          cell: (row) => row.reasons.join(' '),
          text: (row) => row.reasons.join(' '),
        },
        { key: 'who', title: t('who'), cell: (row) => row.weighedBy, text: (row) => row.weighedBy },
      ]}
    />
  );
};

/** Packs of the lot on the scale, the verdict, and whether the e-mark is earned. */
export const QuantityChecks = ({ lot }: { readonly lot: Lot }) => {
  const { code } = lot;
  const t = useMessages(quantityMessages);
  const may = useMay('maker', 'seller');
  const [open, setOpen] = useState(false);
  const checks = useRead('/api/lots/{code}/quantity-checks', { params: { path: { code } } });
  const latest = [...(checks.data ?? [])].sort((a, b) => b.at.localeCompare(a.at))[0];
  const earned = latest?.state === 'accepted';
  return (
    <Section
      title={t('title')}
      actions={
        may && (
          <Button variant="default" onClick={() => setOpen(true)}>
            {t('weigh')}
          </Button>
        )
      }
    >
      <p className="quiet">{t('lead')}</p>
      <Loaded query={checks}>
        {(rows) => (
          <>
            <p>
              <State tone={earned ? 'good' : 'caution'}>
                {earned ? t('mayPrint') : t('mayNotPrint')}
              </State>
            </p>
            <Checks checks={rows} code={code} />
          </>
        )}
      </Loaded>
      {open && <WeighDialog lot={lot} onClose={() => setOpen(false)} />}
    </Section>
  );
};
