import { useList } from '../../api/use-list';
import { useMessages } from '../language/catalogue';
import { ChoiceField } from '../kit/fields';
import { pickerMessages } from './messages';

interface Props {
  readonly label?: string;
  readonly value: string;
  readonly onChange: (id: string) => void;
  readonly error?: string | undefined;
  readonly empty?: string;
  readonly required?: boolean;
}

interface Named {
  readonly id: string;
  readonly name: string;
  readonly active: boolean;
}

const Picker = (props: Props & { readonly rows: readonly Named[]; readonly name: string }) => {
  const t = useMessages(pickerMessages);
  return (
    <ChoiceField
      label={props.label ?? props.name}
      value={props.value}
      onChange={props.onChange}
      error={props.error}
      required={props.required === true}
      empty={props.empty ?? t('choose')}
      choices={props.rows
        .filter(({ active, id }) => active || id === props.value)
        .map(({ id, name }) => ({ value: id, label: name }))}
    />
  );
};

export const SupplierPicker = (props: Props) => {
  const t = useMessages(pickerMessages);
  return <Picker {...props} name={t('supplier')} rows={useList('/api/suppliers').rows} />;
};

export const CustomerPicker = (props: Props) => {
  const t = useMessages(pickerMessages);
  return <Picker {...props} name={t('customer')} rows={useList('/api/customers').rows} />;
};

export const PlacePicker = (props: Props) => {
  const t = useMessages(pickerMessages);
  return <Picker {...props} name={t('place')} rows={useList('/api/places').rows} />;
};
