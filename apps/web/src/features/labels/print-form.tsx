import { useMessages } from '../../shared/language/catalogue';
import { ChoiceField, OneOf, TextField } from '../../shared/kit/fields';
import { labelMessages } from './messages';
import type { StockForm } from './stock-form';

export interface PrintForm {
  readonly form: 'box_label' | 'direct_sale_label' | 'legend_card';
  readonly copies: string;
  readonly price: string;
  readonly stock: StockForm;
}

interface Props {
  readonly value: PrintForm;
  readonly errors: Readonly<Record<string, string>>;
  readonly onChange: (value: PrintForm) => void;
}

const whole = (text: string): string => text.replace(/[^\d.]/g, '');

const StockFields = ({ value, onChange }: Props) => {
  const t = useMessages(labelMessages);
  const { stock } = value;
  const put = (part: Partial<StockForm>): void =>
    onChange({ ...value, stock: { ...stock, ...part } });
  const measure = (
    label: string,
    key: 'widthMm' | 'heightMm' | 'columns' | 'rows' | 'startAt',
    unit: string,
  ) => (
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
          {measure(t('columns'), 'columns', '')}
          {measure(t('rows'), 'rows', '')}
          {measure(t('startAt'), 'startAt', '')}
        </>
      )}
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
        onChange={(form) => onChange({ ...value, form: form as PrintForm['form'] })}
        choices={(['box_label', 'direct_sale_label', 'legend_card'] as const).map((one) => ({
          value: one,
          label: t(one),
        }))}
      />
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
