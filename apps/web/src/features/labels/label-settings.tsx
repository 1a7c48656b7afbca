import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { byId, seen } from '../../api/seen';
import { without } from '../../shared/formats/without';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { labelMessages } from './messages';

type Settings = components['schemas']['LabelSettingsView'];
const LEGAL = ['filled_chocolate', 'praline', 'chocolate', 'assortment', 'confectionery'] as const;
const FORMS = ['loose', 'wrapped', 'singles', 'by_number'] as const;
const SYMBOLS = ['none', 'own_qr', 'gs1datamatrix', 'digital_link', 'ean13'] as const;

const spoken = (words: Record<string, unknown>, language: string): string =>
  typeof words[language] === 'string' ? words[language] : '';

/** How an item is labelled: its sales name, kind, pack and code. */
export const LabelSettingsDialog = (props: {
  readonly itemId: string;
  readonly settings: Settings;
  readonly onClose: () => void;
}) => {
  const t = useMessages(labelMessages);
  const queries = useQueryClient();
  const { version } = props.settings;
  const [value, setValue] = useState(() => without(props.settings, 'usual', 'version'));
  const put = (part: Partial<typeof value>): void => setValue((now) => ({ ...now, ...part }));
  const word = (key: 'names' | 'storage', language: string, text: string): void => {
    const others = without(value[key], language);
    put({ [key]: text === '' ? others : { ...others, [language]: text } });
  };
  return (
    <EditDialog
      title={t('settings')}
      size="lg"
      onClose={props.onClose}
      onSave={async () => {
        await must(
          api.PUT('/api/items/{id}/label-settings', {
            ...byId(props.itemId),
            ...seen(version),
            body: value,
          }),
        );
        await queries.invalidateQueries();
      }}
    >
      {(errors) => (
        <>
          <TextField
            label={t('nameEn')}
            value={spoken(value.names, 'en')}
            onChange={(text) => word('names', 'en', text)}
            error={errors['names']}
          />
          <TextField
            label={t('nameFr')}
            value={spoken(value.names, 'fr')}
            onChange={(text) => word('names', 'fr', text)}
          />
          <TextField
            label={t('storageEn')}
            value={spoken(value.storage, 'en')}
            onChange={(text) => word('storage', 'en', text)}
          />
          <TextField
            label={t('storageFr')}
            value={spoken(value.storage, 'fr')}
            onChange={(text) => word('storage', 'fr', text)}
          />
          <div className="columns">
            <ChoiceField
              label={t('legalName')}
              value={value.legalName}
              onChange={(legalName) => put({ legalName: legalName as Settings['legalName'] })}
              choices={LEGAL.map((one) => ({ value: one, label: one.replaceAll('_', ' ') }))}
            />
            <ChoiceField
              label={t('packForm')}
              value={value.packForm}
              onChange={(packForm) => put({ packForm: packForm as Settings['packForm'] })}
              choices={FORMS.map((one) => ({ value: one, label: one.replaceAll('_', ' ') }))}
            />
            <ChoiceField
              label={t('symbol')}
              value={value.symbol}
              onChange={(symbol) => put({ symbol: symbol as Settings['symbol'] })}
              choices={SYMBOLS.map((one) => ({ value: one, label: one.replaceAll('_', ' ') }))}
            />
            <DecimalField
              label={t('surface')}
              unit="cm²"
              value={value.largestSurfaceCm2}
              onChange={(largestSurfaceCm2) => put({ largestSurfaceCm2 })}
              error={errors['largestSurfaceCm2']}
            />
            <DecimalField
              label={t('panel')}
              unit="cm²"
              value={value.panelAreaCm2}
              onChange={(panelAreaCm2) => put({ panelAreaCm2 })}
              error={errors['panelAreaCm2']}
            />
          </div>
        </>
      )}
    </EditDialog>
  );
};
