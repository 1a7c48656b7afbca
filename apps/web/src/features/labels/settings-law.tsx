import { ChoiceField, TickField } from '../../shared/kit/fields';
import { useMessages } from '../../shared/language/catalogue';
import { labelMessages } from './messages';
import {
  AMERICAN,
  asChoices,
  CHOCOLATES,
  GROUPS,
  LEGAL,
  type SettingsFields,
} from './settings-form';

/** The legal kind, and how the list is written. */
export const SettingsLaw = ({ value, put }: SettingsFields) => {
  const t = useMessages(labelMessages);
  return (
    <>
      <div className="columns">
        <ChoiceField
          label={t('legalName')}
          value={value.legalName}
          onChange={(legalName) => put({ legalName: legalName as typeof value.legalName })}
          choices={asChoices(LEGAL, t)}
        />
        {value.legalName === 'chocolate' && (
          <>
            <ChoiceField
              label={t('chocolateKind')}
              value={value.chocolateKind ?? 'chocolate'}
              onChange={(kind) => put({ chocolateKind: kind as typeof value.chocolateKind })}
              choices={asChoices(CHOCOLATES, t)}
            />
            <ChoiceField
              label={t('americanKind')}
              empty={t('americanUsual')}
              value={value.americanChocolate ?? ''}
              onChange={(kind) =>
                put({
                  americanChocolate: kind === '' ? null : (kind as typeof value.americanChocolate),
                })
              }
              choices={asChoices(AMERICAN, t)}
            />
          </>
        )}
        <ChoiceField
          label={t('listForm')}
          value={value.listForm}
          onChange={(listForm) => put({ listForm: listForm as typeof value.listForm })}
          choices={[
            { value: 'nested', label: t('listNested') },
            { value: 'flattened', label: t('listFlat') },
          ]}
        />
        <ChoiceField
          label={t('additiveForm')}
          value={value.additiveForm}
          onChange={(form) => put({ additiveForm: form as typeof value.additiveForm })}
          choices={[
            { value: 'name', label: t('additiveName') },
            { value: 'e_number', label: t('additiveNumber') },
          ]}
        />
      </div>
      {value.legalName === 'assortment' && (
        <TickField
          label={t('onlyChocolates')}
          checked={value.onlyChocolates}
          onChange={(onlyChocolates) => put({ onlyChocolates })}
        />
      )}
      <fieldset className="one-of">
        <legend>{t('listGroups')}</legend>
        {GROUPS.map((group) => (
          <TickField
            key={group}
            label={t(`group_${group}`)}
            checked={value.listGroups.includes(group)}
            onChange={(on) =>
              put({
                listGroups: on
                  ? [...value.listGroups, group]
                  : value.listGroups.filter((one) => one !== group),
              })
            }
          />
        ))}
      </fieldset>
      {value.listGroups.some((group) => group.startsWith('vegetable_')) && (
        <TickField
          label={t('oilsVary')}
          checked={value.oilsVary}
          onChange={(oilsVary) => put({ oilsVary })}
        />
      )}
    </>
  );
};
