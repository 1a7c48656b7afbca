import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { byId, seen } from '../../api/seen';
import { without } from '../../shared/formats/without';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { useMessages } from '../../shared/language/catalogue';
import { labelMessages } from './messages';
import type { LabelSettings } from './settings-form';
import { SettingsItems } from './settings-items';
import { SettingsLaw } from './settings-law';
import { SettingsNutrition, SettingsPack } from './settings-pack';
import { SettingsTexts } from './settings-texts';

/** How an item is labelled: its words, its law, its pack and its nutrition. */
export const LabelSettingsDialog = (props: {
  readonly itemId: string;
  readonly settings: components['schemas']['LabelSettingsView'];
  readonly onClose: () => void;
}) => {
  const t = useMessages(labelMessages);
  const queries = useQueryClient();
  const { version } = props.settings;
  const [value, setValue] = useState<LabelSettings>(() =>
    without(props.settings, 'usual', 'version'),
  );
  const put = (part: Partial<LabelSettings>): void => setValue((now) => ({ ...now, ...part }));
  const save = async (): Promise<void> => {
    await must(
      api.PUT('/api/items/{id}/label-settings', {
        ...byId(props.itemId),
        ...seen(version),
        body: value,
      }),
    );
    await queries.invalidateQueries();
  };
  return (
    <EditDialog title={t('settings')} size="xl" onClose={props.onClose} onSave={save}>
      {(errors) => {
        const fields = { value, put, errors };
        return (
          <>
            <SettingsTexts {...fields} />
            <h3>{t('partLaw')}</h3>
            <SettingsLaw {...fields} />
            <SettingsItems {...fields} />
            <h3>{t('partPack')}</h3>
            <SettingsPack {...fields} />
            <h3>{t('partNutrition')}</h3>
            <SettingsNutrition {...fields} />
          </>
        );
      }}
    </EditDialog>
  );
};
