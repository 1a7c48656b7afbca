import { Button } from '@mantine/core';
import type { components } from '../../api/schema';
import { addDays, weekStart } from '../../shared/formats/days';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { State } from '../../shared/kit/page';
import { planMessages } from './messages';

type Plan = components['schemas']['PlanView'];
type Batch = components['schemas']['PlannedBatchView'];

const weeksOf = (plan: Plan): readonly string[] => {
  const days = plan.batches.map(({ day }) => day).sort();
  const first = weekStart(days[0] ?? plan.today);
  const last = days.at(-1) ?? plan.today;
  const weeks: string[] = [];
  for (let week = first; week <= last && weeks.length < 20; week = addDays(week, 7))
    weeks.push(week);
  return weeks;
};

const Planned = (props: {
  readonly batch: Batch;
  readonly code: string | undefined;
  readonly onStart: (() => void) | undefined;
}) => {
  const { batch, code, onStart } = props;
  const t = useMessages(planMessages);
  const formats = useFormats();
  return (
    <li className={`planned planned-${batch.step}`}>
      <span className="quiet">{t(batch.step)}</span> <strong>{batch.itemName}</strong>
      <div>
        {formats.quantity(batch.quantity, batch.step === 'cook' ? 'g' : 'pc')}
        {batch.trays !== null && ` · ${t('trays', { count: batch.trays })}`}
      </div>
      {batch.latestDay !== batch.day && (
        <div className="quiet">{t('latest', { day: formats.weekday(batch.latestDay) })}</div>
      )}
      {code !== undefined && <State tone="good">{t('started', { code })}</State>}
      {code === undefined && onStart !== undefined && (
        <Button variant="default" aria-label={`${t('start')} ${batch.itemName}`} onClick={onStart}>
          {t('start')}
        </Button>
      )}
    </li>
  );
};

/** The plan as weeks of seven days; each batch stands on the day on which it starts. */
export const PlanCalendar = (props: {
  readonly plan: Plan;
  readonly onStart: ((batch: Batch) => void) | undefined;
}) => {
  const { plan, onStart } = props;
  const formats = useFormats();
  const started = new Map(plan.started.map(({ key, batchCode }) => [key, batchCode]));
  return (
    <>
      {weeksOf(plan).map((week) => (
        <ol key={week} className="week">
          {Array.from({ length: 7 }, (_, at) => addDays(week, at)).map((day) => {
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
      ))}
    </>
  );
};
