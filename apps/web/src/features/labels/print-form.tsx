import { useMessages } from '../../shared/language/catalogue';
import { ChoiceField, OneOf, TextField, TickField } from '../../shared/kit/fields';
import { LANGUAGES, MARKETS, type LabelForm, type Language } from './label-wishes';
import { labelMessages } from './messages';
import type { StockForm } from './stock-form';

interface Props {
  readonly value: LabelForm;
  readonly errors: Readonly<Record<string, string>>;
  /** Languages that the label speaks now, where none are chosen here. */
  readonly spoken: readonly Language[];
  readonly onChange: (value: LabelForm) => void;
}

const whole = (text: string): string => text.replace(/[^\d.]/g, '');

const StockFields = ({ value, onChange }: Props) => {
  const t = useMessages(labelMessages);
  const { stock } = value;
  const put = (part: Partial<StockForm>): void =>
    onChange({ ...value, stock: { ...stock, ...part } });
  const measure = (label: string, key: Exclude<keyof StockForm, 'kind' | 'page'>, unit: string) => (
    <TextField
      label={`${label}${unit}`}
      value={stock[key]}
      onChange={(text) => put({ [key]: whole(text) })}
    />
  );
  return (
    <>
      <ChoiceField
        label={t('stock')}
        value={stock.kind}
        onChange={(kind) => put({ kind: kind as StockForm['kind'] })}
        choices={[
          { value: 'usual', label: t('stockUsual') },
          { value: 'roll', label: t('stockRoll') },
          { value: 'die_cut', label: t('stockDie') },
          { value: 'sheet', label: t('stockSheet') },
        ]}
      />
      {stock.kind !== 'usual' && measure(t('width'), 'widthMm', ' (mm)')}
      {(stock.kind === 'die_cut' || stock.kind === 'sheet') &&
        measure(t('height'), 'heightMm', ' (mm)')}
      {stock.kind === 'sheet' && (
        <>
          <ChoiceField
            label={t('page')}
            value={stock.page}
            onChange={(page) => put({ page: page as StockForm['page'] })}
            choices={[
              { value: 'A4', label: 'A4' },
              { value: 'LETTER', label: 'Letter' },
            ]}
          />
          {measure(t('columns'), 'columns', '')}
          {measure(t('rows'), 'rows', '')}
          {measure(t('gapX'), 'gapXMm', ' (mm)')}
          {measure(t('gapY'), 'gapYMm', ' (mm)')}
          {measure(t('startAt'), 'startAt', '')}
        </>
      )}
    </>
  );
};

/** For which market and in which languages; at least one language stays. */
const SpeakFields = ({ value, spoken, onChange }: Props) => {
  const t = useMessages(labelMessages);
  const now = value.languages.length === 0 ? spoken : value.languages;
  const toggle = (language: Language, on: boolean): void => {
    const languages = on ? [...now, language] : now.filter((one) => one !== language);
    if (languages.length > 0) onChange({ ...value, languages });
  };
  return (
    <>
      <ChoiceField
        label={t('market')}
        value={value.market}
        empty={t('marketUsual')}
        onChange={(market) => onChange({ ...value, market: market as LabelForm['market'] })}
        choices={MARKETS.map((market) => ({ value: market, label: t(market) }))}
      />
      <fieldset className="one-of">
        <legend>{t('languages')}</legend>
        {LANGUAGES.map((language) => (
          <TickField
            key={language}
            label={t(`in_${language}`)}
            checked={now.includes(language)}
            onChange={(on) => toggle(language, on)}
          />
        ))}
      </fieldset>
    </>
  );
};

/** In which form, on which stock and how often the label prints. */
export const PrintFields = (props: Props) => {
  const { value, onChange, errors } = props;
  const t = useMessages(labelMessages);
  return (
    <div className="stack">
      <OneOf
        label={t('form')}
        value={value.form}
        onChange={(form) => onChange({ ...value, form: form as LabelForm['form'] })}
        choices={(['box_label', 'direct_sale_label', 'legend_card'] as const).map((one) => ({
          value: one,
          label: t(one),
        }))}
      />
      <SpeakFields {...props} />
      <div className="columns">
        <StockFields {...props} />
        <TextField
          label={t('copies')}
          value={value.copies}
          onChange={(copies) => onChange({ ...value, copies: copies.replace(/\D/g, '') })}
          error={errors['copies']}
        />
        <TextField
          label={t('price')}
          value={value.price}
          onChange={(price) => onChange({ ...value, price: price.replace(',', '.') })}
          error={errors['price']}
        />
      </div>
    </div>
  );
};
