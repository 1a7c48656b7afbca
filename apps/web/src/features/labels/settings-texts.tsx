import { useState } from 'react';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { useMessages } from '../../shared/language/catalogue';
import { without } from '../../shared/formats/without';
import { LANGUAGES, type Language } from './label-wishes';
import { labelMessages } from './messages';
import type { SettingsFields } from './settings-form';

type Spoken = 'names' | 'storage' | 'origin' | 'primaryOriginText';

const spoken = (words: Record<string, unknown> | null, language: string): string => {
  const text = words?.[language];
  return typeof text === 'string' ? text : '';
};

/** What the label says in words of the workshop's own, one language at a time. */
export const SettingsTexts = ({ value, put, errors }: SettingsFields) => {
  const t = useMessages(labelMessages);
  const [language, setLanguage] = useState<Language>('en');
  const say = (key: Spoken, text: string): void => {
    const others = without(value[key] ?? {}, language);
    const words = text === '' ? others : { ...others, [language]: text };
    const isEmpty = Object.keys(words).length === 0;
    const none = key === 'origin' || key === 'primaryOriginText' ? null : {};
    put({ [key]: isEmpty ? none : words });
  };
  const field = (key: Spoken, label: string) => (
    <TextField
      label={label}
      value={spoken(value[key], language)}
      onChange={(text) => say(key, text)}
      error={errors[`${key}.${language}`] ?? errors[key]}
    />
  );
  return (
    <>
      <ChoiceField
        label={t('textsIn')}
        value={language}
        onChange={(chosen) => setLanguage(chosen as Language)}
        choices={LANGUAGES.map((one) => ({
          value: one,
          label: `${t(`in_${one}`)}${spoken(value.names, one) === '' ? '' : ' ✓'}`,
        }))}
      />
      {field('names', t('name'))}
      {field('storage', t('storage'))}
      {field('origin', t('origin'))}
      {value.origin !== null && (
        <ChoiceField
          label={t('primaryOrigin')}
          value={value.primaryOrigin}
          onChange={(state) => put({ primaryOrigin: state as typeof value.primaryOrigin })}
          choices={[
            { value: 'unset', label: t('primaryUnset') },
            { value: 'same', label: t('primarySame') },
            { value: 'differs', label: t('primaryDiffers') },
          ]}
        />
      )}
      {value.origin !== null &&
        value.primaryOrigin === 'differs' &&
        field('primaryOriginText', t('primaryText'))}
    </>
  );
};
