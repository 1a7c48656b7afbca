import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { seen } from '../../api/seen';
import { useChange, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { fetchBlob } from '../../shared/kit/download';
import { LongField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { Caution, Fact, Facts, Page, Section, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { complaintMessages } from './messages';

type Complaint = components['schemas']['ComplaintView'];

const Outcome = ({ complaint }: { readonly complaint: Complaint }) => {
  const t = useMessages(complaintMessages);
  const may = useMay('seller', 'maker');
  const [outcome, setOutcome] = useState(complaint.outcome ?? '');
  const save = useChange((closed: boolean | undefined) =>
    must(
      api.PATCH('/api/complaints/{code}', {
        params: { path: { code: complaint.code } },
        ...seen(complaint.version),
        body: {
          outcome: outcome === '' ? null : outcome,
          ...(closed === undefined ? {} : { closed }),
        },
      }),
    ),
  );
  const open = complaint.closedAt === null;
  return (
    <Section title={t('outcome')}>
      <div className="stack text">
        <LongField label={t('outcome')} value={outcome} onChange={setOutcome} disabled={!may} />
        <ProblemNotice error={save.error} />
        {may && (
          <div className="row">
            <Button onClick={() => save.mutate(undefined)}>{t('save')}</Button>
            <Button variant="default" onClick={() => save.mutate(open)}>
              {open ? t('close') : t('reopen')}
            </Button>
          </div>
        )}
      </div>
    </Section>
  );
};

const Photos = ({ complaint }: { readonly complaint: Complaint }) => {
  const t = useMessages(complaintMessages);
  const may = useMay('seller', 'maker');
  const queries = useQueryClient();
  const { working, error, run, cancel } = useStoppable();
  const base = `/api/complaints/${encodeURIComponent(complaint.code)}/photos`;
  const add = (file: File) =>
    run(async ({ signal }) => {
      const body = new FormData();
      body.append('photo', file);
      try {
        await fetchBlob(base, { method: 'POST', body, signal });
      } finally {
        await queries.invalidateQueries();
      }
    });
  return (
    <Section title={t('photos')}>
      <div className="row">
        {complaint.photos.map((photo) => (
          <a key={photo.id} href={`${base}/${photo.id}`} target="_blank" rel="noreferrer">
            <img
              className="photo"
              src={`${base}/${photo.id}`}
              alt={t('photoOf', { name: photo.name })}
            />
          </a>
        ))}
      </div>
      {working && <Working label={t('sendingPhoto')} onCancel={cancel} />}
      <ProblemNotice error={error} />
      {may && !working && (
        <label className="button-link">
          {t('addPhoto')}
          <input
            className="unseen"
            type="file"
            accept="image/jpeg,image/png,image/webp"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              if (file !== undefined) void add(file);
            }}
          />
        </label>
      )}
    </Section>
  );
};

const ComplaintPage = () => {
  const code = useParam('code');
  const t = useMessages(complaintMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const complaint = useRead('/api/complaints/{code}', { params: { path: { code } } });
  return (
    <Loaded query={complaint}>
      {(data) => (
        <Page
          title={`${formats.label(word(data.kind))} ${data.itemName ?? data.codeAsRead}`}
          lead={
            <span className="row">
              <code>{data.code}</code>
              <State tone={data.closedAt === null ? 'caution' : 'good'}>
                {data.closedAt === null ? t('open') : t('closed')}
              </State>
            </span>
          }
          actions={
            data.lotCode !== null && (
              <>
                <Link
                  to="/trace/lots/$code"
                  params={{ code: data.lotCode }}
                  className="button-link button-link-main"
                >
                  {t('trace')}
                </Link>
                <Link
                  to="/trace/recalls/new"
                  search={{ lot: data.lotCode }}
                  className="button-link"
                >
                  {t('recall')}
                </Link>
              </>
            )
          }
        >
          {data.caution !== null && <Caution>{data.caution}</Caution>}
          <p className="text">{data.what}</p>
          <Facts>
            <Fact name={t('day')}>{formats.day(data.receivedOn)}</Fact>
            <Fact name={t('codeAsRead')}>
              <code>{data.codeAsRead}</code>
            </Fact>
            <Fact name={t('lot')}>
              {data.lotCode === null ? t('matchNone') : <code>{data.lotCode}</code>}
            </Fact>
            {data.customer !== null && <Fact name={t('customer')}>{data.customer}</Fact>}
          </Facts>
          <Outcome key={data.version} complaint={data} />
          <Photos complaint={data} />
        </Page>
      )}
    </Loaded>
  );
};

export default ComplaintPage;
