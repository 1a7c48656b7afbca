import { Button } from '@mantine/core';
import { useId, useRef, useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useChange } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { OneOf } from '../../shared/kit/fields';
import { SaveButton, Working } from '../../shared/kit/long-work';
import { Caution, Fact, Facts, Page, Section, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { csvText } from './csv-file';
import { importMessages } from './import-messages';
import { WorkshopNav } from './workshop-nav';

type Report = components['schemas']['ImportReportView'];

const REGISTERS = ['ingredients', 'specifications', 'price-lists'] as const;
type Register = (typeof REGISTERS)[number];

interface Sent {
  readonly csv: string;
  readonly dryRun: boolean;
  readonly signal?: AbortSignal;
}

const Verdict = ({ report }: { readonly report: Report }) => {
  const t = useMessages(importMessages);
  if (report.written) return <State tone="good">{t('written')}</State>;
  if (report.problems.length > 0) {
    return <State tone="warn">{t('notClean', { count: report.problems.length })}</State>;
  }
  if (report.lines === 0) return <State tone="caution">{t('noLines')}</State>;
  return <State tone="good">{t('clean')}</State>;
};

const ReportOf = ({ report }: { readonly report: Report }) => {
  const t = useMessages(importMessages);
  return (
    <div className="stack" role="status">
      <p>
        <Verdict report={report} />
      </p>
      <Facts>
        <Fact name={t('lines')}>{report.lines}</Fact>
        {report.problems.length === 0 && (
          <>
            <Fact name={t('created')}>{report.created}</Fact>
            <Fact name={t('changed')}>{report.changed}</Fact>
            <Fact name={t('unchanged')}>{report.unchanged}</Fact>
          </>
        )}
      </Facts>
      {report.problems.length > 0 && (
        <DataTable
          caption={t('problems')}
          rows={report.problems}
          rowKey={(_row, position) => String(position)}
          csvName="problems"
          columns={[
            {
              key: 'line',
              title: t('line'),
              numeric: true,
              cell: (row) => row.line,
              text: (row) => String(row.line),
            },
            {
              key: 'column',
              title: t('column'),
              cell: (row) => row.column !== null && <code>{row.column}</code>,
              text: (row) => row.column ?? '',
            },
            {
              key: 'problem',
              title: t('problem'),
              cell: (row) => row.message,
              text: (row) => row.message,
            },
          ]}
        />
      )}
    </div>
  );
};

/** Tries a file as soon as it is chosen; only what was tried and is clean can be written. */
const TakeIn = ({ register }: { readonly register: Register }) => {
  const t = useMessages(importMessages);
  const fileId = useId();
  const [csv, setCsv] = useState<string>();
  const trial = useRef<AbortController>(undefined);
  const sent = useChange(({ signal, ...body }: Sent) =>
    must(
      api.POST('/api/imports/{register}', {
        params: { path: { register } },
        body,
        ...(signal === undefined ? {} : { signal }),
      }),
    ),
  );
  // Only a trial can be stopped: once lines are being written, they are all written or none.
  const stop = (): void => {
    trial.current?.abort();
    setCsv(undefined);
    sent.reset();
  };
  const take = async (file: File | undefined): Promise<void> => {
    sent.reset();
    setCsv(undefined);
    if (file === undefined) return;
    const text = await csvText(file);
    setCsv(text);
    trial.current = new AbortController();
    sent.mutate({ csv: text, dryRun: true, signal: trial.current.signal });
  };
  const report = sent.data;
  const ready =
    csv !== undefined &&
    report !== undefined &&
    !report.written &&
    report.problems.length === 0 &&
    report.created + report.changed > 0;
  return (
    <>
      <Section title={t('second')}>
        <div className="stack">
          {register === 'specifications' && <Caution>{t('draftCaution')}</Caution>}
          <div>
            <label htmlFor={fileId}>
              <strong>{t('file')}</strong>
            </label>
            <input
              id={fileId}
              type="file"
              accept=".csv,text/csv"
              className="file-field"
              onClick={(event) => {
                // The same file, put right, can be chosen again.
                event.currentTarget.value = '';
              }}
              onChange={(event) => void take(event.currentTarget.files?.[0])}
            />
          </div>
          {sent.isPending && (
            <Working
              label={sent.variables.dryRun ? t('trying') : t('writing')}
              {...(sent.variables.dryRun ? { onCancel: stop } : {})}
            />
          )}
          <ProblemNotice error={sent.error} />
          {report !== undefined && <ReportOf report={report} />}
        </div>
      </Section>
      {ready && (
        <Section title={t('third')}>
          <Button loading={sent.isPending} onClick={() => sent.mutate({ csv, dryRun: false })}>
            {t('write')}
          </Button>
        </Section>
      )}
    </>
  );
};

/** Whole registers from CSV files, and out again in the same columns. */
const ImportPage = () => {
  const t = useMessages(importMessages);
  const mayWrite = useMay('maker');
  const [register, setRegister] = useState<Register>('ingredients');
  return (
    <Page title={t('title')} lead={t('lead')}>
      <WorkshopNav />
      <div className="section">
        <OneOf
          label={t('register')}
          value={register}
          onChange={(next) => setRegister(next as Register)}
          choices={REGISTERS.map((one) => ({ value: one, label: t(one) }))}
        />
      </div>
      <Section title={t('first')}>
        <div className="stack">
          <p className="quiet">{t('firstLead')}</p>
          <SaveButton
            key={register}
            label={t('save', { register: t(register) })}
            path={`/api/imports/${register}`}
            fileName={`${register}.csv`}
          />
        </div>
      </Section>
      {mayWrite && <TakeIn key={register} register={register} />}
    </Page>
  );
};

export default ImportPage;
