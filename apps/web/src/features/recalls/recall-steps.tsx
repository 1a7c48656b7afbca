import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Watched } from '../../api/watched';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { SaveButton } from '../../shared/kit/save-button';
import { Caution, State } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
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
      <LongPaperLink href={`${base}/list.pdf`}>{t('list')}</LongPaperLink>
      <LongPaperLink href={`${base}/letters.pdf`} leaves>
        {t('letters')}
      </LongPaperLink>
      <LongPaperLink href={`${base}/notice.pdf`} leaves>
        {t('notice')}
      </LongPaperLink>
      <SaveButton label={t('listCsv')} path={`${base}/list.csv`} fileName={`${recall.code}.csv`} />
    </div>
  );
};

const Holding = (props: Props & { readonly working: boolean; readonly onHold: () => void }) => {
  const { recall, mayAct, working, onHold } = props;
  const t = useMessages(recallMessages);
  if (recall.mode === 'rehearsal') return <p className="quiet">{t('rehearsalHold')}</p>;
  if (recall.notHeld.length === 0) return <State tone="good">{t('holdDone')}</State>;
  return (
    <>
      <State tone="warn">{t('notHeld', { count: recall.notHeld.length })}</State>
      {mayAct && (
        <Button disabled={working} onClick={onHold}>
          {t('holdAll')}
        </Button>
      )}
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
  const { working, id, error, run, cancel } = useStoppable('goes-on');
  const freeze = (watched: Watched) =>
    step(
      '/api/recalls/{code}/freeze',
      { excluded: [...excluded].map(([lot, reason]) => ({ lot, reason })) },
      t('freeze'),
      watched,
    );
  const hold = (watched: Watched) =>
    step('/api/recalls/{code}/holds', undefined, t('holdAll'), watched);
  const closed = recall.state === 'closed';
  return (
    <>
      {working && <Working label={t('throughScope')} id={id} onCancel={cancel} />}
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
              {mayAct && (
                <Button disabled={working} onClick={() => void run(freeze)}>
                  {t('freeze')}
                </Button>
              )}
            </>
          ) : (
            <State tone="good">
              {recall.frozenAt === null ? '' : formats.instant(recall.frozenAt)}
            </State>
          )}
        </li>
        <li>
          <h3>{t('step3')}</h3>
          <Holding {...props} working={working} onHold={() => void run(hold)} />
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
              <LongPaperLink href={reportHref(recall)}>{t('report')}</LongPaperLink>
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
                <LongPaperLink href={reportHref(recall)}>{t('report')}</LongPaperLink>
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
