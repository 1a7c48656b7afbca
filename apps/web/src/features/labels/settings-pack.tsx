import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, TextField, TickField } from '../../shared/kit/fields';
import { useMessages } from '../../shared/language/catalogue';
import { labelMessages } from './messages';
import {
  asChoices,
  CANDIES,
  PACK_FORMS,
  SYMBOLS,
  type LabelSettings,
  type SettingsFields,
} from './settings-form';

const ticks = [
  'always', 'fibre', 'referenceIntakes', 'naturalSaltOnly', 'makesClaim', 'smallLocalMaker',
  'usSmallBusiness', 'preferMorePieces',
] as const satisfies readonly (keyof LabelSettings['nutrition'])[]; // prettier-ignore

/** The pack: its size, its quantity, its date and its code. */
export const SettingsPack = ({ value, put, errors }: SettingsFields) => {
  const t = useMessages(labelMessages);
  const measure = (
    key: 'largestSurfaceCm2' | 'panelAreaCm2' | 'sittingGrams',
    label: string,
    unit: string,
  ) => (
    <DecimalField
      label={label}
      unit={unit}
      value={value[key]}
      onChange={(text) => put({ [key]: text })}
      error={errors[key]}
    />
  );
  return (
    <>
      <div className="columns">
        <ChoiceField
          label={t('packForm')}
          value={value.packForm}
          onChange={(packForm) => put({ packForm: packForm as typeof value.packForm })}
          choices={asChoices(PACK_FORMS, t)}
        />
        <DecimalField
          label={t('netGrams')}
          unit="g"
          value={value.netGrams ?? ''}
          onChange={(text) => put({ netGrams: text === '' ? null : text })}
          error={errors['netGrams']}
        />
        <TextField
          label={t('pieceCount')}
          value={value.pieceCount === null ? '' : String(value.pieceCount)}
          onChange={(text) => {
            const digits = text.replace(/\D/g, '');
            put({ pieceCount: digits === '' ? null : Number(digits) });
          }}
          error={errors['pieceCount']}
        />
        <ChoiceField
          label={t('dateForm')}
          value={value.dateForm}
          onChange={(dateForm) => put({ dateForm: dateForm as typeof value.dateForm })}
          choices={[
            { value: 'full', label: t('dateFull') },
            { value: 'shortest', label: t('dateShortest') },
          ]}
        />
        <ChoiceField
          label={t('symbol')}
          value={value.symbol}
          onChange={(symbol) => put({ symbol: symbol as typeof value.symbol })}
          choices={asChoices(SYMBOLS, t)}
        />
        {measure('largestSurfaceCm2', t('surface'), 'cm²')}
        {measure('panelAreaCm2', t('panel'), 'cm²')}
        {measure('sittingGrams', t('sitting'), 'g')}
      </div>
      <TickField label={t('eMark')} checked={value.eMark} onChange={(eMark) => put({ eMark })} />
      <TickField
        label={t('atmosphere')}
        checked={value.protectiveAtmosphere}
        onChange={(protectiveAtmosphere) => put({ protectiveAtmosphere })}
      />
    </>
  );
};

/** The nutrition declaration: when it is due, and what it shows. */
export const SettingsNutrition = ({ value, put, errors }: SettingsFields) => {
  const t = useMessages(labelMessages);
  const { nutrition } = value;
  const set = (part: Partial<LabelSettings['nutrition']>): void =>
    put({ nutrition: { ...nutrition, ...part } });
  const grams = (key: 'portionGrams' | 'pieceGrams', label: string) => (
    <DecimalField
      label={label}
      unit="g"
      value={nutrition[key] ?? ''}
      onChange={(text) => set({ [key]: text === '' ? null : text })}
      error={errors[`nutrition.${key}`]}
    />
  );
  return (
    <>
      <div className="columns">
        {grams('portionGrams', t('portion'))}
        {grams('pieceGrams', t('piece'))}
        <ChoiceField
          label={t('candyKind')}
          value={nutrition.candyKind}
          onChange={(kind) => set({ candyKind: kind as typeof nutrition.candyKind })}
          choices={asChoices(CANDIES, t)}
        />
      </div>
      {ticks.map((key) => (
        <TickField
          key={key}
          label={t(`nutrition_${key}`)}
          checked={nutrition[key]}
          onChange={(on) => set({ [key]: on })}
        />
      ))}
    </>
  );
};
