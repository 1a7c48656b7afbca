import { Button } from '@mantine/core';
import { useItems } from '../../shared/pickers/item-picker';
import { ChoiceField } from '../../shared/kit/fields';
import { useMessages } from '../../shared/language/catalogue';
import { labelMessages } from './messages';
import type { SettingsFields } from './settings-form';

/** Ingredients whose quantity is stated, and pairs that stand in for each other. */
export const SettingsItems = ({ value, put }: SettingsFields) => {
  const t = useMessages(labelMessages);
  const { rows } = useItems();
  const ingredients = rows
    .filter(({ kind }) => kind === 'ingredient')
    .map(({ id, name }) => ({ value: id, label: name }));
  const nameOf = (id: string): string =>
    ingredients.find((item) => item.value === id)?.label ?? '…';
  const { quantifiedItemIds: stated, interchangeable: pairs } = value;
  return (
    <>
      <ChoiceField
        label={t('quantified')}
        value=""
        empty={t('choose')}
        onChange={(id) => put({ quantifiedItemIds: [...new Set([...stated, id])] })}
        choices={ingredients}
      />
      <div className="row">
        {stated.map((id) => (
          <Button
            key={id}
            variant="default"
            onClick={() => put({ quantifiedItemIds: stated.filter((one) => one !== id) })}
          >
            {t('remove', { what: nameOf(id) })}
          </Button>
        ))}
      </div>
      <ChoiceField
        label={t('interchangeable')}
        value=""
        empty={t('choose')}
        onChange={(id) => {
          const begun = pairs.find((pair) => pair.itemId === pair.orItemId);
          const done = pairs.map((pair) => (pair === begun ? { ...pair, orItemId: id } : pair));
          put({ interchangeable: begun ? done : [...pairs, { itemId: id, orItemId: id }] });
        }}
        choices={ingredients}
      />
      <div className="row">
        {pairs.map((pair) => (
          <Button
            key={pair.itemId + pair.orItemId}
            variant="default"
            onClick={() => put({ interchangeable: pairs.filter((one) => one !== pair) })}
          >
            {t('remove', {
              what: `${nameOf(pair.itemId)} / ${pair.itemId === pair.orItemId ? '…' : nameOf(pair.orItemId)}`,
            })}
          </Button>
        ))}
      </div>
    </>
  );
};
