import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { useSearchText } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { ChoiceField, DayField, LongField, OneOf, TextField } from '../../shared/kit/fields';
import { Caution, Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { PlacePicker, SupplierPicker } from '../../shared/pickers/party-pickers';
import { useScans } from '../../shared/scan/use-scans';
import { recallMessages } from './messages';

type Start = components['schemas']['RecallStartDto'];
type Kind = 'lot' | 'mould' | 'supplier' | 'tank' | 'place';

interface StartForm {
  readonly kind: Kind;
  readonly text: string;
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

const windowOf = (form: StartForm) => ({
  ...(form.from === '' ? {} : { from: new Date(`${form.from}T00:00:00`).toISOString() }),
  ...(form.to === '' ? {} : { to: new Date(`${form.to}T23:59:59`).toISOString() }),
});

/** A code is looked up as whatever it is: a box, a piece, a supplier's lot. */
const startOf = (form: StartForm): Start => {
  if (form.kind === 'lot') return { kind: 'text', text: form.text };
  if (form.kind === 'mould') return { kind: 'mould', text: form.text };
  return { kind: form.kind, id: form.id, ...windowOf(form) };
};

const StartFields = (props: {
  readonly form: StartForm;
  readonly put: (part: Partial<StartForm>) => void;
}) => {
  const { form, put } = props;
  const t = useMessages(recallMessages);
  const tanks = useList('/api/tanks').rows;
  const byText = form.kind === 'lot' || form.kind === 'mould';
  return (
    <>
      <OneOf
        label={t('startsFrom')}
        value={form.kind}
        onChange={(kind) => put({ kind: kind as Kind, id: '', text: '' })}
        choices={[
          { value: 'lot', label: t('fromLot') },
          { value: 'mould', label: t('fromMould') },
          { value: 'supplier', label: t('fromSupplier') },
          { value: 'tank', label: t('fromTank') },
          { value: 'place', label: t('fromPlace') },
        ]}
      />
      {byText && (
        <TextField
          label={t('code')}
          value={form.text}
          onChange={(text) => put({ text })}
          required
        />
      )}
      {form.kind === 'supplier' && (
        <SupplierPicker value={form.id} onChange={(id) => put({ id })} />
      )}
      {form.kind === 'place' && <PlacePicker value={form.id} onChange={(id) => put({ id })} />}
      {form.kind === 'tank' && (
        <ChoiceField
          label={t('tank')}
          value={form.id}
          empty="–"
          onChange={(id) => put({ id })}
          choices={tanks.map(({ id, name }) => ({ value: id, label: name }))}
        />
      )}
      {(form.kind === 'tank' || form.kind === 'place') && (
        <div className="columns">
          <DayField label={t('from')} value={form.from} onChange={(from) => put({ from })} />
          <DayField label={t('to')} value={form.to} onChange={(to) => put({ to })} />
        </div>
      )}
    </>
  );
};

const OpenRecall = () => {
  const t = useMessages(recallMessages);
  const book = useBooking();
  const navigate = useNavigate();
  const lot = useSearchText('lot');
  const mould = useSearchText('mould');
  const [mode, setMode] = useState<'real' | 'rehearsal'>('rehearsal');
  const [reason, setReason] = useState('');
  const [form, setForm] = useState<StartForm>({
    kind: mould === undefined ? 'lot' : 'mould',
    text: lot ?? mould ?? '',
    id: '',
    from: '',
    to: '',
  });
  const [error, setError] = useState<unknown>();
  useScans((text) => setForm((now) => ({ ...now, kind: 'lot', text })));
  const go = async (): Promise<void> => {
    try {
      const done = await book({
        path: '/api/recalls',
        body: { mode, reason, starts: [startOf(form)] },
        label: t('bookLabel'),
        lane: 'recalls',
      });
      if (done.kind === 'done')
        await navigate({ to: '/trace/recalls/$code', params: { code: done.answer.code } });
    } catch (cause) {
      setError(cause);
    }
  };
  return (
    <Page title={t('open')} lead={t('openLead')}>
      <form
        className="stack text"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void go();
        }}
      >
        <OneOf
          label={t('mode')}
          value={mode}
          onChange={(next) => setMode(next as 'real' | 'rehearsal')}
          choices={[
            { value: 'rehearsal', label: t('modeRehearsal') },
            { value: 'real', label: t('modeReal') },
          ]}
        />
        {mode === 'real' && <Caution>{t('callAuthority')}</Caution>}
        <LongField label={t('reason')} value={reason} onChange={setReason} required />
        <StartFields form={form} put={(part) => setForm((now) => ({ ...now, ...part }))} />
        <ProblemNotice error={error} />
        <div className="row">
          <Button
            type="submit"
            size="lg"
            disabled={reason.trim() === '' || (form.text === '' && form.id === '')}
          >
            {t('go')}
          </Button>
        </div>
      </form>
    </Page>
  );
};

export default OpenRecall;
