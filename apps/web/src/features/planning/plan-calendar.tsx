import { Button } from '@mantine/core';
import type { components } from '../../api/schema';
import { addDays, weekStart } from '../../shared/formats/days';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { State } from '../../shared/kit/page';
import { Picture } from '../../shared/kit/picture';
import { planMessages } from './messages';

type Plan = components['schemas']['PlanView'];
type Batch = components['schemas']['PlannedBatchView'];

interface Props {
  readonly plan: Plan;
  readonly onStart: ((batch: Batch) => void) | undefined;
}

const weeksOf = (plan: Plan): readonly string[] => {
  const days = plan.batches.map(({ day }) => day).sort();
  const first = weekStart(days[0] ?? plan.today);
  const last = days.at(-1) ?? plan.today;
  const weeks: string[] = [];
  for (let week = first; week <= last && weeks.length < 20; week = addDays(week, 7))
    weeks.push(week);
  return weeks;
};

const useAmount = () => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  return ({ quantity, step, trays }: Batch): string =>
    formats.quantity(quantity, step === 'cook' ? 'g' : t('pieces')) +
    (trays === null ? '' : ` · ${t('trays', { count: trays })}`);
};

const Planned = (props: {
  readonly batch: Batch;
  readonly code: string | undefined;
  readonly onStart: (() => void) | undefined;
}) => {
  const { batch, code, onStart } = props;
  const t = useMessages(planMessages);
  const formats = useFormats();
  const amount = useAmount();
  return (
    <li className={`planned planned-${batch.step}`}>
      <div>
        <span className="quiet">{t(batch.step)}</span> <strong>{batch.itemName}</strong>
        <div>{amount(batch)}</div>
        {batch.latestDay !== batch.day && (
          <div className="quiet">{t('latest', { day: formats.weekday(batch.latestDay) })}</div>
        )}
      </div>
      {code !== undefined && <State tone="good">{t('started', { code })}</State>}
      {code === undefined && onStart !== undefined && (
        <Button variant="default" aria-label={`${t('start')} ${batch.itemName}`} onClick={onStart}>
          {t('start')}
        </Button>
      )}
    </li>
  );
};

const Week = (props: Props & { readonly week: string }) => {
  const { plan, onStart, week } = props;
  const formats = useFormats();
  const started = new Map(plan.started.map(({ key, batchCode }) => [key, batchCode]));
  const days = Array.from({ length: 7 }, (_, at) => addDays(week, at));
  return (
    <ol className="week">
      {days.map((day) => {
        const batches = plan.batches.filter((batch) => batch.day === day);
        return (
          <li
            key={day}
            className={`day ${day === plan.today ? 'day-today' : ''} ${batches.length === 0 ? 'day-empty' : ''}`}
          >
            <h3>{formats.weekday(day)}</h3>
            <ul className="plain-list">
              {batches.map((batch) => (
                <Planned
                  key={batch.key}
                  batch={batch}
                  code={started.get(batch.key)}
                  onStart={onStart === undefined ? undefined : () => onStart(batch)}
                />
              ))}
            </ul>
          </li>
        );
      })}
    </ol>
  );
};

/**
 * The plan as weeks: each batch stands on the day on which it starts. Where seven days don't fit
 * side by side, those without work fall out and the others stand next to each other.
 */
export const PlanCalendar = ({ plan, onStart }: Props) => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  const amount = useAmount();
  const rows = [...plan.batches].sort((a, b) => a.day.localeCompare(b.day));
  return (
    <Picture
      title={t('whatWhen')}
      summary={rows
        .map((row) => `${formats.weekday(row.day)} ${t(row.step)} ${row.itemName}`)
        .join('; ')}
      rows={rows}
      rowKey={({ key }) => key}
      csvName="plan"
      columns={[
        {
          key: 'day',
          title: t('onDay'),
          cell: (row) => formats.weekday(row.day),
          text: (row) => row.day,
        },
        { key: 'step', title: t('step'), cell: (row) => t(row.step), text: (row) => t(row.step) },
        {
          key: 'item',
          title: t('item'),
          cell: (row) => <strong>{row.itemName}</strong>,
          text: (row) => row.itemName,
        },
        { key: 'amount', title: t('quantity'), cell: amount, text: amount },
        {
          key: 'latest',
          title: t('latestStart'),
          cell: (row) => formats.weekday(row.latestDay),
          text: (row) => row.latestDay,
        },
        {
          key: 'ready',
          title: t('ready'),
          cell: (row) => formats.weekday(row.readyDay),
          text: (row) => row.readyDay,
        },
        {
          key: 'for',
          title: t('madeFor'),
          cell: (row) => row.for.join(', '),
          text: (row) => row.for.join(', '),
        },
      ]}
    >
      {weeksOf(plan).map((week) => (
        <Week key={week} plan={plan} onStart={onStart} week={week} />
      ))}
    </Picture>
  );
};
