import { Button } from '@mantine/core';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { fieldErrors, ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { useChange, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { without } from '../../shared/formats/without';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, LongField, TextField, TickField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { workshopMessages } from './messages';
import { WorkshopNav } from './workshop-nav';

type Workshop = components['schemas']['WorkshopView'];
type Change = components['schemas']['ChangeWorkshopDto'];

const LANGUAGES = {
  en: 'English',
  fr: 'Français',
  de: 'Deutsch',
  nl: 'Nederlands',
  it: 'Italiano',
  es: 'Español',
};
const RULES = ['per_hour', 'per_piece', 'percent'] as const;
const timeZones = (): readonly string[] => Intl.supportedValuesOf('timeZone');

const changed = (before: Workshop, after: Workshop): Change => {
  return Object.fromEntries(
    Object.entries(without(after, 'version', 'settings')).filter(
      ([key, value]) => JSON.stringify(value) !== JSON.stringify(before[key as keyof Workshop]),
    ),
  );
};

interface Save {
  readonly before: Workshop;
  readonly after: Workshop;
}

const useSave = () =>
  useChange(({ before, after }: Save) =>
    must(
      api.PATCH('/api/workshop', {
        body: changed(before, after),
        headers: { 'If-Match': `"${String(before.version)}"` },
      }),
    ),
  );

type Put = (change: Partial<Workshop>) => void;
interface PartProps {
  readonly value: Workshop;
  readonly put: Put;
  readonly errors: Readonly<Record<string, string>>;
  readonly disabled: boolean;
}

const orNull = (text: string): string | null => (text === '' ? null : text);

const Business = ({ value, put, errors, disabled }: PartProps) => {
  const t = useMessages(workshopMessages);
  return (
    <div className="stack">
      <TextField
        label={t('name')}
        value={value.name}
        onChange={(name) => put({ name })}
        error={errors['name']}
        disabled={disabled}
      />
      <LongField
        label={t('address')}
        value={value.addressLines.join('\n')}
        onChange={(text) => put({ addressLines: text.split('\n') })}
        error={errors['addressLines']}
        disabled={disabled}
      />
      <TextField
        label={t('phone')}
        type="tel"
        value={value.phone ?? ''}
        onChange={(text) => put({ phone: orNull(text) })}
        error={errors['phone']}
        disabled={disabled}
      />
      <TextField
        label={t('email')}
        type="email"
        value={value.email ?? ''}
        onChange={(text) => put({ email: orNull(text) })}
        error={errors['email']}
        disabled={disabled}
      />
      <ChoiceField
        label={t('timeZone')}
        value={value.timeZone}
        onChange={(timeZone) => put({ timeZone })}
        choices={timeZones().map((zone) => ({ value: zone, label: zone }))}
        error={errors['timeZone']}
        disabled={disabled}
      />
      <TextField
        label={t('currency')}
        value={value.currency}
        maxLength={3}
        onChange={(text) => put({ currency: text.toUpperCase() })}
        error={errors['currency']}
        disabled={disabled}
      />
    </div>
  );
};

const Rules = ({ value, put, errors, disabled }: PartProps) => {
  const t = useMessages(workshopMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const languages = new Set<string>(value.languages);
  const toggle = (code: string, on: boolean): void =>
    put({
      languages: (on
        ? [...value.languages, code]
        : value.languages.filter((one) => one !== code)) as Workshop['languages'],
    });
  return (
    <div className="stack">
      <ChoiceField
        label={t('market')}
        value={value.market}
        onChange={(market) => put({ market: market as Workshop['market'] })}
        choices={['EU', 'GB', 'NI', 'US'].map((code) => ({ value: code, label: code }))}
        error={errors['market']}
        disabled={disabled}
      />
      <Caution>{t('marketCaution')}</Caution>
      <fieldset className="one-of">
        <legend>
          {formats.label(t('languages'))} {value.languages.join(', ')}
        </legend>
        {Object.entries(LANGUAGES).map(([code, name]) => (
          <TickField
            key={code}
            label={name}
            checked={languages.has(code)}
            disabled={disabled}
            onChange={(on) => toggle(code, on)}
          />
        ))}
      </fieldset>
      <TextField
        label={t('prefix')}
        value={value.gs1CompanyPrefix ?? ''}
        maxLength={12}
        onChange={(text) => put({ gs1CompanyPrefix: orNull(text) })}
        error={errors['gs1CompanyPrefix']}
        disabled={disabled}
      />
      <TextField
        label={t('codePattern')}
        hint={t('codePatternHint')}
        value={value.codePattern}
        onChange={(codePattern) => put({ codePattern })}
        error={errors['codePattern']}
        disabled={disabled}
      />
      <ChoiceField
        label={t('overheadRule')}
        value={value.overheadRule}
        onChange={(rule) => put({ overheadRule: rule as Workshop['overheadRule'] })}
        choices={RULES.map((rule) => ({ value: rule, label: word(rule) }))}
        error={errors['overheadRule']}
        disabled={disabled}
      />
      <DecimalField
        label={t('overheadValue')}
        unit={value.overheadRule === 'percent' ? '%' : value.currency}
        value={value.overheadValue}
        onChange={(overheadValue) => put({ overheadValue })}
        error={errors['overheadValue']}
        disabled={disabled}
      />
    </div>
  );
};

interface FormProps {
  readonly workshop: Workshop;
  readonly save: ReturnType<typeof useSave>;
}

const Form = ({ workshop, save }: FormProps) => {
  const t = useMessages(workshopMessages);
  const owner = useMay();
  const [value, setValue] = useState(workshop);
  const errors = save.error instanceof ProblemError ? fieldErrors(save.error.problem) : {};
  const put: Put = (change) => setValue((now) => ({ ...now, ...change }));
  const part = { value, put, errors, disabled: !owner };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const addressLines = value.addressLines
          .map((line) => line.trim())
          .filter((line) => line !== '');
        save.mutate({ before: workshop, after: { ...value, addressLines } });
      }}
    >
      <div className="halves">
        <Business {...part} />
        <Rules {...part} />
      </div>
      <div className="form-foot">
        <ProblemNotice error={save.error} />
        {owner ? (
          <Button type="submit" loading={save.isPending}>
            {t('save')}
          </Button>
        ) : (
          <p className="quiet">{t('onlyOwner')}</p>
        )}
      </div>
    </form>
  );
};

const Settings = () => {
  const t = useMessages(workshopMessages);
  const workshop = useRead('/api/workshop');
  // Kept here: the form is made anew from what was saved, and would forget that it was.
  const save = useSave();
  return (
    <Page title={t('title')} lead={t('lead')}>
      <WorkshopNav />
      <p role="status">{save.isSuccess && t('saved')}</p>
      <Loaded query={workshop}>
        {(data) => <Form key={data.version} workshop={data} save={save} />}
      </Loaded>
    </Page>
  );
};

export default Settings;
