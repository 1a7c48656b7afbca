import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { byId, seen } from '../../api/seen';
import { type Row, useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { OneOf, TextField, TickField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { workshopMessages } from './messages';
import { WorkshopNav } from './workshop-nav';

type Place = Row<'/api/places'>;
const KINDS = ['store', 'fridge', 'freezer', 'room'] as const;
const orNull = (text: string): string | null => (text === '' ? null : text);

const formOf = (place: Place | undefined) => ({
  name: place?.name ?? '',
  kind: place?.kind ?? 'fridge',
  minTempC: place?.minTempC ?? '',
  maxTempC: place?.maxTempC ?? '',
  maxHumidityPercent: place?.maxHumidityPercent ?? '',
  everyHours: place?.readingEveryHours?.toString() ?? '',
  active: place?.active ?? true,
});

const save = (form: ReturnType<typeof formOf>, place: Place | undefined): Promise<unknown> => {
  const body = {
    name: form.name.trim(),
    minTempC: orNull(form.minTempC),
    maxTempC: orNull(form.maxTempC),
    maxHumidityPercent: orNull(form.maxHumidityPercent),
    readingEveryHours: form.everyHours === '' ? null : Number(form.everyHours),
  };
  return place === undefined
    ? must(api.POST('/api/places', { body: { ...body, kind: form.kind } }))
    : must(
        api.PATCH('/api/places/{id}', {
          ...byId(place.id),
          ...seen(place.version),
          body: { ...body, active: form.active },
        }),
      );
};

const PlaceDialog = (props: {
  readonly place: Place | undefined;
  readonly onClose: () => void;
}) => {
  const { place } = props;
  const t = useMessages(workshopMessages);
  const word = useServiceWords();
  const queries = useQueryClient();
  const [form, setForm] = useState(() => formOf(place));
  const put = (change: Partial<typeof form>): void => setForm((now) => ({ ...now, ...change }));
  return (
    <EditDialog
      title={place === undefined ? t('addPlace') : t('changeOf', { name: place.name })}
      onClose={props.onClose}
      onSave={async () => {
        await save(form, place);
        await queries.invalidateQueries();
      }}
    >
      {(errors) => (
        <>
          <TextField
            label={t('name')}
            value={form.name}
            onChange={(name) => put({ name })}
            error={errors['name']}
            required
          />
          {place === undefined && (
            <OneOf
              label={t('kind')}
              value={form.kind}
              onChange={(kind) => put({ kind: kind as Place['kind'] })}
              choices={KINDS.map((kind) => ({ value: kind, label: word(kind) }))}
            />
          )}
          <DecimalField
            label={t('minTemp')}
            unit="°C"
            value={form.minTempC}
            onChange={(minTempC) => put({ minTempC })}
            error={errors['minTempC']}
          />
          <DecimalField
            label={t('maxTemp')}
            unit="°C"
            value={form.maxTempC}
            onChange={(maxTempC) => put({ maxTempC })}
            error={errors['maxTempC']}
          />
          <DecimalField
            label={t('maxHumidity')}
            unit="%"
            value={form.maxHumidityPercent}
            onChange={(value) => put({ maxHumidityPercent: value })}
            error={errors['maxHumidityPercent']}
          />
          <DecimalField
            label={t('everyHours')}
            unit={t('hours')}
            value={form.everyHours}
            onChange={(everyHours) => put({ everyHours })}
            error={errors['readingEveryHours']}
          />
          {place !== undefined && (
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

/** A place's limits as they would be said aloud. */
const useLimits = (): ((place: Place) => string) => {
  const t = useMessages(workshopMessages);
  const formats = useFormats();
  return ({ minTempC, maxTempC, maxHumidityPercent }) => {
    const low = minTempC === null ? '' : formats.number(minTempC);
    const high = maxTempC === null ? '' : formats.number(maxTempC);
    const temp = low === '' ? t('tempTo', { high }) : t('tempFrom', { low });
    return [
      low !== '' && high !== '' ? t('tempBetween', { low, high }) : low + high === '' ? '' : temp,
      maxHumidityPercent === null
        ? ''
        : t('humidityTo', { high: formats.number(maxHumidityPercent) }),
    ]
      .filter((part) => part !== '')
      .join(', ');
  };
};

const Places = () => {
  const t = useMessages(workshopMessages);
  const word = useServiceWords();
  const may = useMay('maker');
  const list = useList('/api/places');
  const limits = useLimits();
  const [open, setOpen] = useState<Place | 'new'>();
  return (
    <Page
      title={t('places')}
      actions={may && <Button onClick={() => setOpen('new')}>{t('addPlace')}</Button>}
    >
      <WorkshopNav />
      <Loaded query={list.query}>
        {(rows) => (
          <DataTable
            caption={t('places')}
            rows={rows}
            empty={t('noPlaces')}
            rowKey={({ id }) => id}
            columns={[
              {
                key: 'name',
                title: t('name'),
                cell: ({ name }) => <strong>{name}</strong>,
                text: ({ name }) => name,
              },
              {
                key: 'kind',
                title: t('kind'),
                cell: ({ kind }) => word(kind),
                text: ({ kind }) => kind,
              },
              {
                key: 'tag',
                title: t('tag'),
                cell: ({ tag }) => <code>{tag}</code>,
                text: ({ tag }) => tag,
              },
              { key: 'limits', title: t('limits'), wide: true, cell: limits, text: limits },
              {
                key: 'change',
                title: '',
                cell: (place) =>
                  may && (
                    <Button
                      variant="default"
                      aria-label={t('changeOf', { name: place.name })}
                      onClick={() => setOpen(place)}
                    >
                      {t('change')}
                    </Button>
                  ),
                text: () => '',
              },
            ]}
          />
        )}
      </Loaded>
      {open !== undefined && (
        <PlaceDialog place={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Page>
  );
};

export default Places;
