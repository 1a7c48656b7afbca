import { Button } from '@mantine/core';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useChange } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Section, State } from '../../shared/kit/page';
import { waterMessages } from './water-messages';

type Body = components['schemas']['CalibrateDto'];
type Check = components['schemas']['SaltCheckDto'];
type Calibration = components['schemas']['CalibrationView'];

const SALTS: readonly Check['salt'][] = ['NaCl', 'KCl', 'MgCl2', 'LiCl'];

const SaltFields = (props: {
  readonly check: Check;
  readonly at: number;
  readonly onChange: (check: Check) => void;
  readonly onRemove: (() => void) | undefined;
  readonly errors: Readonly<Record<string, string>>;
}) => {
  const { check, at, onChange, errors } = props;
  const t = useMessages(waterMessages);
  const errorOf = (field: string) => errors[`checks.${String(at)}.${field}`];
  return (
    <fieldset className="columns columns-end plain-group">
      <legend className="unseen">{t('salt')}</legend>
      <ChoiceField
        label={t('salt')}
        value={check.salt}
        onChange={(salt) => onChange({ ...check, salt: salt as Check['salt'] })}
        choices={SALTS.map((salt) => ({ value: salt, label: `${salt} · ${t(salt)}` }))}
      />
      <DecimalField
        label={t('temp')}
        unit="°C"
        value={check.tempC}
        onChange={(tempC) => onChange({ ...check, tempC })}
        error={errorOf('tempC')}
        required
      />
      <DecimalField
        label={t('reading')}
        unit="aw"
        hint={t('fraction')}
        value={check.reading}
        onChange={(reading) => onChange({ ...check, reading })}
        error={errorOf('reading')}
        required
      />
      {props.onRemove !== undefined && (
        <Button variant="default" onClick={props.onRemove}>
          {t('remove')}
        </Button>
      )}
    </fieldset>
  );
};

const CalibrateDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(waterMessages);
  const [instrument, setInstrument] = useState('');
  const [note, setNote] = useState('');
  const [checks, setChecks] = useState<readonly Check[]>([
    // One on each side of what a ganache reads.
    { salt: 'NaCl', tempC: '25', reading: '' },
    { salt: 'KCl', tempC: '25', reading: '' },
  ]);
  const save = useChange((body: Body) => must(api.POST('/api/meters/calibrations', { body })));
  const unused = SALTS.find((salt) => checks.every((check) => check.salt !== salt));
  return (
    <EditDialog
      title={t('calibrate')}
      size="lg"
      onClose={onClose}
      onSave={() =>
        save.mutateAsync({ instrument, checks: [...checks], note: note === '' ? null : note })
      }
    >
      {(errors) => (
        <>
          <TextField
            label={t('instrument')}
            value={instrument}
            onChange={setInstrument}
            error={errors['instrument']}
            required
          />
          {checks.map((check, at) => (
            <SaltFields
              key={String(at)}
              check={check}
              at={at}
              errors={errors}
              onChange={(changed) =>
                setChecks(checks.map((one, position) => (position === at ? changed : one)))
              }
              onRemove={
                checks.length === 1
                  ? undefined
                  : () => setChecks(checks.filter((_one, position) => position !== at))
              }
            />
          ))}
          {unused !== undefined && (
            <div>
              <Button
                variant="default"
                onClick={() => setChecks([...checks, { salt: unused, tempC: '25', reading: '' }])}
              >
                {t('addSalt')}
              </Button>
            </div>
          )}
          <TextField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
        </>
      )}
    </EditDialog>
  );
};

const CalibrationTable = (props: {
  readonly rows: readonly Calibration[];
  readonly onMore: (() => void) | undefined;
}) => {
  const { rows, onMore } = props;
  const t = useMessages(waterMessages);
  const formats = useFormats();
  const deviations = (row: Calibration): string =>
    row.checks
      .map(({ salt, reading, expected }) =>
        t('deviation', {
          salt,
          reading: formats.number(reading, 3),
          expected: formats.number(expected, 3),
        }),
      )
      .join('; ');
  return (
    <DataTable
      caption={t('meters')}
      rows={rows}
      rowKey={({ id }) => id}
      csvName="calibrations"
      onMore={onMore}
      empty={t('noMeters')}
      columns={[
        {
          key: 'at',
          title: t('at'),
          tight: true,
          cell: (row) => formats.instant(row.at),
          text: (row) => row.at,
        },
        {
          key: 'instrument',
          title: t('meter'),
          cell: (row) => <strong>{row.instrument}</strong>,
          text: (row) => row.instrument,
        },
        {
          key: 'passed',
          title: t('verdict'),
          cell: (row) => (
            <State tone={row.passed ? 'good' : 'warn'}>
              {row.passed ? t('passed') : t('failed')}
            </State>
          ),
          text: (row) => (row.passed ? t('passed') : t('failed')),
        },
        {
          key: 'uncertainty',
          title: t('uncertainty'),
          numeric: true,
          cell: (row) => `± ${formats.number(row.uncertainty, 3)}`,
          text: (row) => row.uncertainty,
        },
        {
          key: 'deviations',
          title: t('deviations'),
          wide: true,
          cell: deviations,
          text: deviations,
        },
        {
          key: 'advice',
          title: t('advice'),
          wide: true,
          cell: (row) => row.advice,
          text: (row) => row.advice,
        },
      ]}
    />
  );
};

/** Meters held against salts whose water activity is known. */
export const Calibrations = () => {
  const t = useMessages(waterMessages);
  const may = useMay('maker');
  const [open, setOpen] = useState(false);
  const list = useList('/api/meters/calibrations');
  return (
    <Section
      title={t('meters')}
      actions={
        may && (
          <Button variant="default" onClick={() => setOpen(true)}>
            {t('calibrate')}
          </Button>
        )
      }
    >
      <Loaded query={list.query}>
        {(rows) => <CalibrationTable rows={rows} onMore={list.more} />}
      </Loaded>
      {open && <CalibrateDialog onClose={() => setOpen(false)} />}
    </Section>
  );
};
