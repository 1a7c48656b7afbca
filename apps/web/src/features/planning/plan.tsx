import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking, useRead } from '../../api/use-api';
import { ProblemError } from '../../api/problem';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { OutNav } from '../../shared/rooms/out-nav';
import { planMessages } from './messages';
import { PlanCalendar } from './plan-calendar';
import { WaysOut } from './ways-out';

type Plan = components['schemas']['PlanView'];

const Shopping = ({ plan }: { readonly plan: Plan }) => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  const rows = plan.shopping.flatMap((order) =>
    order.lines.map((line) => ({ ...line, supplier: order.supplier })),
  );
  return (
    <Section title={t('shopping')}>
      {plan.shopping
        .filter(({ belowMinimum }) => Number(belowMinimum) > 0)
        .map((order) => (
          <p key={order.supplier ?? ''}>
            <State tone="caution">
              {formats.label(order.supplier ?? t('noSupplier'))}{' '}
              {t('belowMinimum', { money: formats.money(order.belowMinimum) })}
            </State>
          </p>
        ))}
      <DataTable
        caption={t('shopping')}
        rows={rows}
        rowKey={(row) => row.itemId + row.orderBy}
        csvName="shopping"
        empty={t('nothing')}
        columns={[
          {
            key: 'supplier',
            title: t('supplier'),
            cell: (row) => row.supplier ?? t('noSupplier'),
            text: (row) => row.supplier ?? '',
          },
          {
            key: 'item',
            title: t('item'),
            cell: (row) => <strong>{row.itemName}</strong>,
            text: (row) => row.itemName,
          },
          {
            key: 'needed',
            title: t('needed'),
            numeric: true,
            cell: (row) => formats.number(row.needed),
            text: (row) => row.needed,
          },
          {
            key: 'ordered',
            title: t('order'),
            numeric: true,
            cell: (row) =>
              `${formats.number(row.ordered)}${row.packs === null ? '' : ` (${String(row.packs)} ×)`}`,
            text: (row) => row.ordered,
          },
          {
            key: 'by',
            title: t('orderBy'),
            cell: (row) => formats.weekday(row.orderBy),
            text: (row) => row.orderBy,
          },
          {
            key: 'on',
            title: t('neededOn'),
            cell: (row) => formats.weekday(row.neededOn),
            text: (row) => row.neededOn,
          },
          {
            key: 'cost',
            title: t('cost'),
            numeric: true,
            cell: (row) => (row.cost === null ? '–' : formats.money(row.cost)),
            text: (row) => row.cost ?? '',
          },
        ]}
      />
    </Section>
  );
};

const Shortfalls = ({ plan }: { readonly plan: Plan }) => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  if (plan.shortfalls.length === 0) return null;
  return (
    <Section title={t('shortfalls')}>
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
  const book = useBooking();
  const plan = useRead('/api/plan');
  const [error, setError] = useState<unknown>();
  const act = (work: Promise<unknown>): void => {
    setError(undefined);
    work.catch(setError);
  };
  const make = () =>
    book({ path: '/api/plan', body: undefined, label: t('planLabel'), lane: 'plan' });
  const none = plan.error instanceof ProblemError && plan.error.problem.status === 404;
  return (
    <Page
      title={t('plan')}
      lead={t('planLead')}
      actions={mayPlan && <Button onClick={() => act(make())}>{t('make')}</Button>}
    >
      <OutNav />
      <ProblemNotice error={error} />
      {none ? (
        <p className="quiet">{t('noPlan')}</p>
      ) : (
        <Loaded query={plan}>
          {(data) => (
            <>
              <p className="quiet">{t('madeAt', { at: formats.instant(data.madeAt) })}</p>
              <Shortfalls plan={data} />
              {data.shortfalls.length > 0 && <WaysOut />}
              <Section
                title={t('calendar')}
                actions={<a href={`/api/plan/${data.id}/calendar.ics`}>{t('ics')}</a>}
              >
                <PlanCalendar
                  plan={data}
                  onStart={
                    mayStart
                      ? (batch) =>
                          act(
                            book({
                              path: '/api/plan/{id}/batches',
                              at: { id: data.id },
                              body: { keys: [batch.key] },
                              label: t('startLabel', { item: batch.itemName }),
                              lane: 'plan',
                            }),
                          )
                      : undefined
                  }
                />
              </Section>
              <Shopping plan={data} />
            </>
          )}
        </Loaded>
      )}
    </Page>
  );
};

export default PlanPage;
