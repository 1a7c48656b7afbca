import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { byId, seen } from '../../api/seen';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { useServiceWords } from '../language/words';
import { DecimalField } from '../kit/decimal-field';
import { EditDialog } from '../kit/edit-dialog';
import { LongField, OneOf, TextField, TickField } from '../kit/fields';
import { changeOf, formOf, unitOf, type ItemForm } from './item-form';
import { itemMessages } from './messages';

type Item = components['schemas']['ItemView'];
type Errors = Readonly<Record<string, string>>;
interface PartProps {
  readonly form: ItemForm;
  readonly put: (change: Partial<ItemForm>) => void;
  readonly errors: Errors;
}

const save = (form: ItemForm, item: Item | undefined): Promise<Item> =>
  item === undefined
    ? must(
        api.POST('/api/items', {
          body: { ...changeOf(form), kind: form.kind, unit: unitOf(form) },
        }),
      )
    : must(
        api.PATCH('/api/items/{id}', {
          ...byId(item.id),
          ...seen(item.version),
          body: { ...changeOf(form), active: form.active },
        }),
      );

const Ticks = ({ form, put }: PartProps) => {
  const t = useMessages(itemMessages);
  return (
    <div className="columns">
      <TickField
        label={t('perishable')}
        checked={form.perishable}
        onChange={(perishable) => put({ perishable })}
      />
      <TickField
        label={t('capsDate')}
        checked={form.capsDate}
        onChange={(capsDate) => put({ capsDate })}
      />
      <TickField
        label={t('infusionOnly')}
        checked={form.infusionOnly}
        onChange={(infusionOnly) => put({ infusionOnly })}
      />
      <TickField
        label={t('processingAid')}
        checked={form.processingAid}
        onChange={(processingAid) => put({ processingAid })}
      />
    </div>
  );
};

const Details = ({ form, put, errors }: PartProps) => {
  const t = useMessages(itemMessages);
  const { currency } = useFormats();
  const unit = unitOf(form);
  const made = form.kind === 'piece' || form.kind === 'box';
  return (
    <>
      {made ? (
        <>
          <DecimalField
            label={t('nominal')}
            unit="g"
            value={form.nominalMassGrams}
            onChange={(nominalMassGrams) => put({ nominalMassGrams })}
            error={errors['nominalMassGrams']}
          />
          <TextField
            label={t('vatClass')}
            value={form.vatClass}
            onChange={(vatClass) => put({ vatClass })}
            error={errors['vatClass']}
          />
        </>
      ) : (
        <>
          <DecimalField
            label={unit === 'g' ? t('replacement') : t('replacementEach')}
            unit={currency}
            value={form.replacementPrice}
            onChange={(replacementPrice) => put({ replacementPrice })}
            error={errors['replacementPrice']}
          />
          <DecimalField
            label={t('warmest')}
            unit="°C"
            value={form.warmestTempC}
            onChange={(warmestTempC) => put({ warmestTempC })}
            error={errors['warmestTempC']}
          />
        </>
      )}
      <TextField
        label={t('gtin')}
        value={form.gtin}
        maxLength={14}
        onChange={(gtin) => put({ gtin })}
        error={errors['gtin']}
      />
      <TextField
        label={t('storage')}
        value={form.storageConditions}
        onChange={(storageConditions) => put({ storageConditions })}
        error={errors['storageConditions']}
      />
    </>
  );
};

/** The form of an item; `kinds` are those that may be chosen for a new one. */
export const ItemDialog = (props: {
  readonly item: Item | undefined;
  readonly kinds: readonly Item['kind'][];
  readonly onClose: () => void;
  readonly onSaved?: (item: Item) => void;
}) => {
  const { item, kinds } = props;
  const t = useMessages(itemMessages);
  const word = useServiceWords();
  const queries = useQueryClient();
  const [form, setForm] = useState(() => formOf(item, kinds[0] ?? 'ingredient'));
  const put = (change: Partial<ItemForm>): void => setForm((now) => ({ ...now, ...change }));
  const onSave = async (): Promise<void> => {
    const saved = await save(form, item);
    await queries.invalidateQueries();
    props.onSaved?.(saved);
  };
  return (
    <EditDialog
      title={item === undefined ? t('add') : t('changeOf', { name: item.name })}
      size="lg"
      onClose={props.onClose}
      onSave={onSave}
    >
      {(errors) => (
        <>
          <TextField
            label={t('name')}
            value={form.name}
            maxLength={120}
            onChange={(name) => put({ name })}
            error={errors['name']}
            required
          />
          {item === undefined && kinds.length > 1 && (
            <OneOf
              label={t('kind')}
              value={form.kind}
              onChange={(kind) => put({ kind: kind as Item['kind'] })}
              choices={kinds.map((kind) => ({ value: kind, label: word(kind) }))}
            />
          )}
          {item === undefined && (form.kind === 'ingredient' || form.kind === 'packaging') && (
            <OneOf
              label={t('unit')}
              value={form.unit}
              onChange={(unit) => put({ unit: unit as Item['unit'] })}
              choices={[
                { value: 'g', label: t('grams') },
                { value: 'pc', label: t('pieces') },
              ]}
            />
          )}
          <Details form={form} put={put} errors={errors} />
          {form.kind === 'ingredient' && <Ticks form={form} put={put} errors={errors} />}
          <LongField
            label={t('note')}
            value={form.note}
            onChange={(note) => put({ note })}
            error={errors['note']}
          />
          {item !== undefined && (
            <TickField
              label={t('inUse')}
              checked={form.active}
              onChange={(active) => put({ active })}
            />
          )}
        </>
      )}
    </EditDialog>
  );
};
