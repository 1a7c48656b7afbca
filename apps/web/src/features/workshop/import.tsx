import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useId, useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { sentWith } from '../../api/watched';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { OneOf } from '../../shared/kit/fields';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { SaveButton } from '../../shared/kit/save-button';
import { Caution, Fact, Facts, Page, Section, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { csvText } from './csv-file';
import { importMessages } from './import-messages';
import { WorkshopNav } from './workshop-nav';

type Report = components['schemas']['ImportReportView'];

const REGISTERS = ['ingredients', 'specifications', 'price-lists'] as const;
type Register = (typeof REGISTERS)[number];

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
  const queries = useQueryClient();
  const [csv, setCsv] = useState<string>();
  const [report, setReport] = useState<Report>();
  const [trying, setTrying] = useState(true);
  const { working, id, error, run, cancel } = useStoppable();
  const send = (text: string, dryRun: boolean) =>
    run(async (watched) => {
      setTrying(dryRun);
      try {
        const sent = { params: { path: { register } }, body: { csv: text, dryRun } };
        setReport(
          await must(api.POST('/api/imports/{register}', { ...sent, ...sentWith(watched) })),
        );
      } finally {
        if (!dryRun) await queries.invalidateQueries();
      }
    });
  // All lines are written or none; which of the two a stop met, the next trial of the file says.
  const stop = (): void => {
    cancel();
    setCsv(undefined);
    setReport(undefined);
  };
  const take = async (file: File | undefined): Promise<void> => {
    setReport(undefined);
    setCsv(undefined);
    if (file === undefined) return;
    const text = await csvText(file);
    setCsv(text);
    await send(text, true);
  };
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
          {working && (
            <Working label={trying ? t('trying') : t('writing')} id={id} onCancel={stop} />
          )}
          <ProblemNotice error={error} />
          {report !== undefined && <ReportOf report={report} />}
        </div>
      </Section>
      {ready && !working && (
        <Section title={t('third')}>
          <Button onClick={() => void send(csv, false)}>{t('write')}</Button>
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
