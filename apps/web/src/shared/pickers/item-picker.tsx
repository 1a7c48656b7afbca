import { Select } from '@mantine/core';
import type { ReactNode } from 'react';
import { useList, type Row } from '../../api/use-list';
import { useMessages } from '../language/catalogue';
import { useServiceWords } from '../language/words';
import { pickerMessages } from './messages';

export type Item = Row<'/api/items'>;

interface Props {
  readonly label?: string;
  readonly value: string;
  readonly onChange: (id: string, item: Item | undefined) => void;
  readonly kinds?: readonly Item['kind'][];
  readonly error?: ReactNode;
  readonly required?: boolean;
  readonly disabled?: boolean;
}

/** Every item of the workshop, once read; a small workshop has a few hundred at most. */
export const useItems = () => useList('/api/items', { limit: 500 });

/** Picks an item by typing part of its name. */
export const ItemPicker = (props: Props) => {
  const t = useMessages(pickerMessages);
  const word = useServiceWords();
  const { rows } = useItems();
  const offered = rows.filter(
    (item) =>
      (item.active || item.id === props.value) &&
      (props.kinds === undefined || props.kinds.includes(item.kind)),
  );
  const kinds = [...new Set(offered.map(({ kind }) => kind))];
  return (
    <Select
      label={props.label ?? t('item')}
      value={props.value === '' ? null : props.value}
      data={kinds.map((kind) => ({
        group: word(kind),
        items: offered
          .filter((item) => item.kind === kind)
          .map(({ id, name }) => ({ value: id, label: name })),
      }))}
      searchable
      placeholder={t('choose')}
      nothingFoundMessage={t('nothing')}
      error={props.error}
      withAsterisk={props.required === true}
      disabled={props.disabled === true}
      comboboxProps={{ withinPortal: true }}
      maxDropdownHeight={320}
      onChange={(id) =>
        props.onChange(
          id ?? '',
          rows.find((item) => item.id === id),
        )
      }
    />
  );
};
