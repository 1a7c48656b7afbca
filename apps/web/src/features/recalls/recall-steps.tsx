import { Button } from '@mantine/core';
import { useState } from 'react';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { SaveButton } from '../../shared/kit/long-work';
import { Caution, State } from '../../shared/kit/page';
import { PaperLink } from '../../shared/kit/paper-link';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { recallMessages } from './messages';
import { CloseDialog, NoteDialog, RecoverDialog } from './recall-dialogs';
import { type Recall, useRecallStep } from './use-recall-step';

type Open = 'recover' | 'close' | 'note';

interface Props {
  readonly recall: Recall;
  readonly excluded: ReadonlyMap<string, string>;
  readonly mayAct: boolean;
}

const reportHref = ({ code }: Recall): string =>
  `/api/recalls/${encodeURIComponent(code)}/report.pdf`;

const Papers = ({ recall }: { readonly recall: Recall }) => {
  const t = useMessages(recallMessages);
  const base = `/api/recalls/${encodeURIComponent(recall.code)}`;
  return (
    <div className="row">
      <PaperLink href={`${base}/list.pdf`}>{t('list')}</PaperLink>
      <PaperLink href={`${base}/letters.pdf`} leaves>
        {t('letters')}
      </PaperLink>
      <PaperLink href={`${base}/notice.pdf`} leaves>
        {t('notice')}
      </PaperLink>
      <SaveButton label={t('listCsv')} path={`${base}/list.csv`} fileName={`${recall.code}.csv`} />
    </div>
  );
};

const Holding = (props: Props & { readonly onHold: () => void }) => {
  const { recall, mayAct, onHold } = props;
  const t = useMessages(recallMessages);
  if (recall.mode === 'rehearsal') return <p className="quiet">{t('rehearsalHold')}</p>;
  if (recall.notHeld.length === 0) return <State tone="good">{t('holdDone')}</State>;
  return (
    <>
      <State tone="warn">{t('notHeld', { count: recall.notHeld.length })}</State>
      {mayAct && <Button onClick={onHold}>{t('holdAll')}</Button>}
    </>
  );
};

/** The case step by step, each with what can be done now. */
export const RecallSteps = (props: Props) => {
  const { recall, excluded, mayAct } = props;
  const t = useMessages(recallMessages);
  const formats = useFormats();
  const step = useRecallStep(recall);
  const [open, setOpen] = useState<Open>();
  const [error, setError] = useState<unknown>();
  const act = (work: () => Promise<unknown>): void => {
    setError(undefined);
    work().catch(setError);
  };
  const freeze = () =>
    step(
      '/api/recalls/{code}/freeze',
      { excluded: [...excluded].map(([lot, reason]) => ({ lot, reason })) },
      t('freeze'),
    );
  const closed = recall.state === 'closed';
  return (
    <>
      <ProblemNotice error={error} />
      <ol className="plain-list recall-steps">
        <li>
          <h3>{t('step1')}</h3>
          <p className="quiet">
            {t('scopeCount', {
              lots: recall.scope.lots.length,
              customers: recall.customers.length,
            })}
          </p>
        </li>
        <li>
          <h3>{t('step2')}</h3>
          {recall.state === 'open' ? (
            <>
              <p className="quiet">{t('freezeLead')}</p>
              {mayAct && <Button onClick={() => act(freeze)}>{t('freeze')}</Button>}
            </>
          ) : (
            <State tone="good">
              {recall.frozenAt === null ? '' : formats.instant(recall.frozenAt)}
            </State>
          )}
        </li>
        <li>
          <h3>{t('step3')}</h3>
          <Holding
            {...props}
            onHold={() => act(() => step('/api/recalls/{code}/holds', undefined, t('holdAll')))}
          />
        </li>
        <li>
          <h3>{t('step4')}</h3>
          {recall.mode === 'real' && <Caution>{t('callAuthority')}</Caution>}
          <Papers recall={recall} />
        </li>
        <li>
          <h3>{t('step5')}</h3>
          <p>
            {t('recovered')} <strong>{formats.mass(recall.effectiveness.recoveredGrams)}</strong>
            {recall.effectiveness.recoveredPercent !== null &&
              ` (${formats.percent(recall.effectiveness.recoveredPercent)})`}{' '}
            · {t('outstanding')}{' '}
            <strong>{formats.mass(recall.effectiveness.outstandingGrams)}</strong>
          </p>
          {mayAct &&
            !closed &&
            recall.state === 'frozen' &&
            [...recall.scope.sales, ...recall.learned.sales].length > 0 && (
              <Button variant="default" onClick={() => setOpen('recover')}>
                {t('recover')}
              </Button>
            )}
        </li>
        <li>
          <h3>{t('step6')}</h3>
          {closed ? (
            <div className="row">
              <State tone="good">{t('closed')}</State>
              <PaperLink href={reportHref(recall)}>{t('report')}</PaperLink>
            </div>
          ) : (
            mayAct && (
              <div className="row">
                <Button variant="default" onClick={() => setOpen('note')}>
                  {t('note')}
                </Button>
                <Button variant="default" onClick={() => setOpen('close')}>
                  {t('close')}
                </Button>
                <PaperLink href={reportHref(recall)}>{t('report')}</PaperLink>
              </div>
            )
          )}
        </li>
      </ol>
      {open === 'recover' && <RecoverDialog recall={recall} onClose={() => setOpen(undefined)} />}
      {open === 'close' && <CloseDialog recall={recall} onClose={() => setOpen(undefined)} />}
      {open === 'note' && <NoteDialog recall={recall} onClose={() => setOpen(undefined)} />}
    </>
  );
};
