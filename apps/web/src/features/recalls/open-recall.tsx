import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useBooking } from '../../api/use-api';
import { useSearchText } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { LongField, OneOf } from '../../shared/kit/fields';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { Caution, Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { useScans } from '../../shared/scan/use-scans';
import { StartFields } from '../../shared/starts/start-fields';
import {
  EMPTY_START,
  isWhole,
  startOf,
  type StartForm,
  useStartInAddress,
} from '../../shared/starts/start-form';
import { recallMessages } from './messages';

/** The start in the address: a link from a lot or a mould names only its code. */
const useFirstForm = (): StartForm => {
  const lot = useSearchText('lot');
  const mould = useSearchText('mould');
  const given = useStartInAddress();
  if (lot !== undefined) return { ...EMPTY_START, text: lot };
  return mould === undefined ? given : { ...EMPTY_START, kind: 'mould', text: mould };
};

const OpenRecall = () => {
  const t = useMessages(recallMessages);
  const book = useBooking();
  const navigate = useNavigate();
  const formats = useFormats();
  const [mode, setMode] = useState<'real' | 'rehearsal'>('rehearsal');
  const [reason, setReason] = useState('');
  const [form, setForm] = useState<StartForm>(useFirstForm());
  const { working, id, error, run, cancel } = useStoppable('goes-on');
  useScans((text) => setForm((now) => ({ ...now, kind: 'text', text })));
  const go = () =>
    run(async (watched) => {
      const done = await book(
        {
          path: '/api/recalls',
          body: { mode, reason, starts: [startOf(form, formats)] },
          label: t('bookLabel'),
          lane: 'recalls',
        },
        watched,
      );
      if (done.kind === 'done')
        await navigate({ to: '/trace/recalls/$code', params: { code: done.answer.code } });
    });
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
        {working && <Working label={t('finding')} id={id} onCancel={cancel} />}
        <ProblemNotice error={error} />
        <div className="row">
          <Button
            type="submit"
            size="lg"
            disabled={working || reason.trim() === '' || !isWhole(form)}
          >
            {t('go')}
          </Button>
        </div>
      </form>
    </Page>
  );
};

export default OpenRecall;
