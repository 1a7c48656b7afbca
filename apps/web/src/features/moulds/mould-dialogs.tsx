import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { type Row, useList } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, LongField, OneOf, TextField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { mouldMessages } from './messages';

type Mould = Row<'/api/moulds'>;
type Result = components['schemas']['InspectionDto']['result'];
const whole = (text: string): string => text.replace(/\D/g, '');

export const DesignDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(mouldMessages);
  const queries = useQueryClient();
  const [form, setForm] = useState({
    name: '',
    shape: '',
    rows: '',
    columns: '',
    volume: '',
    mass: '',
  });
  const put = (change: Partial<typeof form>): void => setForm((now) => ({ ...now, ...change }));
  const save = async (): Promise<void> => {
    const body = {
      name: form.name,
      shape: form.shape,
      rows: Number(form.rows),
      columns: Number(form.columns),
      cavityVolumeMl: form.volume === '' ? null : form.volume,
      pieceMassGrams: form.mass === '' ? null : form.mass,
    };
    await must(api.POST('/api/mould-designs', { body }));
    await queries.invalidateQueries();
  };
  return (
    <EditDialog title={t('addDesign')} onClose={onClose} onSave={save}>
      {(errors) => (
        <>
          <TextField
            label={t('name')}
            value={form.name}
            onChange={(name) => put({ name })}
            error={errors['name']}
            required
          />
          <TextField
            label={t('shape')}
            value={form.shape}
            onChange={(shape) => put({ shape })}
            error={errors['shape']}
            required
          />
          <div className="columns">
            <TextField
              label={t('rows')}
              value={form.rows}
              onChange={(text) => put({ rows: whole(text) })}
              error={errors['rows']}
              required
            />
            <TextField
              label={t('columns')}
              value={form.columns}
              onChange={(text) => put({ columns: whole(text) })}
              error={errors['columns']}
              required
            />
          </div>
          <DecimalField
            label={t('volume')}
            unit="mL"
            value={form.volume}
            onChange={(volume) => put({ volume })}
            error={errors['cavityVolumeMl']}
          />
          <DecimalField
            label={t('pieceMass')}
            unit="g"
            value={form.mass}
            onChange={(mass) => put({ mass })}
            error={errors['pieceMassGrams']}
          />
        </>
      )}
    </EditDialog>
  );
};

export const TraysDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(mouldMessages);
  const book = useBooking();
  const designs = useList('/api/mould-designs').rows;
  const [designId, setDesignId] = useState('');
  const [count, setCount] = useState('');
  return (
    <EditDialog
      title={t('addTrays')}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/moulds',
          body: { designId, count: Number(count) },
          label: t('traysLabel', { count }),
          lane: 'moulds',
        })
      }
    >
      {(errors) => (
        <>
          <ChoiceField
            label={t('designs')}
            value={designId}
            empty="–"
            onChange={setDesignId}
            error={errors['designId']}
            choices={designs.map(({ id, name }) => ({ value: id, label: name }))}
          />
          <TextField
            label={t('count')}
            value={count}
            onChange={(text) => setCount(whole(text))}
            error={errors['count']}
          />
        </>
      )}
    </EditDialog>
  );
};

export const InspectDialog = (props: { readonly mould: Mould; readonly onClose: () => void }) => {
  const { tag } = props.mould;
  const t = useMessages(mouldMessages);
  const word = useServiceWords();
  const book = useBooking();
  const [result, setResult] = useState<Result>('sound');
  const [note, setNote] = useState('');
  return (
    <EditDialog
      title={t('inspectTitle', { tag })}
      onClose={props.onClose}
      onSave={() =>
        book({
          path: '/api/moulds/{tag}/inspections',
          at: { tag },
          body: { result, note: note === '' ? null : note },
          label: t('inspectLabel', { tag }),
          lane: `mould-${tag}`,
        })
      }
    >
      {(errors) => (
        <>
          <Caution>{t('inspectLead')}</Caution>
          <OneOf
            label={t('result')}
            value={result}
            onChange={(next) => setResult(next as Result)}
            choices={(['sound', 'chipped', 'retired'] as const).map((one) => ({
              value: one,
              label: word(one),
            }))}
          />
          <LongField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
        </>
      )}
    </EditDialog>
  );
};
