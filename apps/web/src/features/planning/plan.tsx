import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { sentWith } from '../../api/watched';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useLanguage, useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { Caution, Page, Section, State } from '../../shared/kit/page';
import { inScreenLanguage } from '../../shared/kit/paper-link';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { OutNav } from '../../shared/rooms/out-nav';
import { planMessages } from './messages';
import { PlanCalendar } from './plan-calendar';
import { Shopping } from './shopping';
import { WaysOut } from './ways-out';

type Plan = components['schemas']['PlanView'];

const Shortfalls = ({ plan }: { readonly plan: Plan }) => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  if (plan.shortfalls.length === 0) return null;
  const stopped = plan.shortfalls.some(({ because }) =>
    because.some(({ kind }) => kind === 'not_tried'),
  );
  return (
    <Section title={t('shortfalls')}>
      <p>{t('doesNotFit', { count: plan.shortfalls.length })}</p>
      {stopped && <Caution>{t('stopped')}</Caution>}
      <ul className="plain-list">
        {plan.shortfalls.map((short) => (
          <li key={short.demand + short.itemId} className="row line">
            <State tone="warn">
              {t('missing')} {formats.number(short.missing)}
            </State>
            <strong>{short.itemName}</strong> {short.for}, {formats.weekday(short.dueDay)}
            <span>
              {short.because.map((one) => t(one.kind, { subject: one.subject })).join('; ')}
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
};

const PlanPage = () => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  const mayPlan = useMay('maker', 'seller');
  const mayStart = useMay('maker');
  const language = useLanguage();
  const book = useBooking();
  const plans = useList('/api/plans', { limit: 1 });
  const queries = useQueryClient();
  const { working, id, error, setError, run, cancel } = useStoppable();
  const act = (work: Promise<unknown>): void => {
    setError(undefined);
    work.catch(setError);
  };
  // Not through the queue: a plan that is made hours later, when the network is back, is of no use.
  const make = () =>
    run(async (watched) => {
      try {
        await must(api.POST('/api/plan', { ...sentWith(watched) }));
      } finally {
        await queries.invalidateQueries();
      }
    });
  const start = (plan: Plan, batch: Plan['batches'][number]) =>
    book({
      path: '/api/plan/{id}/batches',
      at: { id: plan.id },
      body: { keys: [batch.key] },
      label: t('startLabel', { item: batch.itemName }),
      lane: 'plan',
    });
  return (
    <Page
      title={t('plan')}
      lead={t('planLead')}
      actions={mayPlan && !working && <Button onClick={() => void make()}>{t('make')}</Button>}
    >
      <OutNav />
      {working && <Working label={t('planning')} id={id} onCancel={cancel} />}
      <ProblemNotice error={error} />
      <Loaded query={plans.query}>
        {([plan]) =>
          plan === undefined ? (
            <p className="quiet">{t('noPlan')}</p>
          ) : (
            <>
              <p className="quiet section">
                {t('madeAt', { at: formats.instant(plan.madeAt) })} ·{' '}
                <Link to="/out/plan/settings">{t('rules')}</Link>
              </p>
              <Shortfalls plan={plan} />
              {plan.shortfalls.length > 0 && <WaysOut />}
              <Section
                title={t('calendar')}
                actions={
                  <a href={inScreenLanguage(`/api/plan/${plan.id}/calendar.ics`, language)}>
                    {t('ics')}
                  </a>
                }
              >
                <PlanCalendar
                  plan={plan}
                  onStart={mayStart ? (batch) => act(start(plan, batch)) : undefined}
                />
              </Section>
              <Shopping plan={plan} />
            </>
          )
        }
      </Loaded>
    </Page>
  );
};

export default PlanPage;
