import { Button } from '@mantine/core';
import type { ReactNode } from 'react';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { DayField, TextField } from '../../shared/kit/fields';
import { Section } from '../../shared/kit/page';
import { newDay, newSeason, type SeasonForm, type SpecialDay } from './settings-form';
import { planSettingsMessages } from './settings-messages';
import { NumberOf, type PartProps } from './settings-work';
import { WeekdayTicks } from './weekday-ticks';

interface Keyed {
  readonly key: string;
}

/** Rows that are written one under the other, added and removed. */
const Rows = <R extends Keyed>(props: {
  readonly title: string;
  readonly lead: string;
  readonly add: string;
  readonly rows: readonly R[];
  readonly disabled: boolean;
  readonly nameOf: (row: R) => string;
  readonly newRow: () => R;
  readonly onChange: (rows: readonly R[]) => void;
  readonly children: (row: R, position: number, put: (part: Partial<R>) => void) => ReactNode;
}) => {
  const t = useMessages(planSettingsMessages);
  const { rows, onChange } = props;
  const put = (key: string) => (part: Partial<R>) =>
    onChange(rows.map((row) => (row.key === key ? { ...row, ...part } : row)));
  return (
    <Section title={props.title}>
      <p className="quiet text">{props.lead}</p>
      {rows.length === 0 && <p className="quiet">{t('noneYet')}</p>}
      {rows.map((row, position) => (
        <div key={row.key} className="columns columns-end line">
          {props.children(row, position, put(row.key))}
          {!props.disabled && (
            <Button
              variant="default"
              aria-label={t('removeOf', { name: props.nameOf(row) })}
              onClick={() => onChange(rows.filter(({ key }) => key !== row.key))}
            >
              {t('remove')}
            </Button>
          )}
        </div>
      ))}
      {!props.disabled && (
        <Button variant="default" onClick={() => onChange([...rows, props.newRow()])}>
          {props.add}
        </Button>
      )}
    </Section>
  );
};

export const SpecialDays = ({ form, put, errors, disabled }: PartProps) => {
  const t = useMessages(planSettingsMessages);
  const formats = useFormats();
  const error = (at: number, name: string) => errors[`dayMinutes.${String(at)}.${name}`];
  return (
    <Rows<SpecialDay>
      title={t('special')}
      lead={t('specialLead')}
      add={t('addDay')}
      rows={form.dayMinutes}
      disabled={disabled}
      nameOf={({ day }) => formats.day(day)}
      newRow={() => newDay(formats.today())}
      onChange={(dayMinutes) => put({ dayMinutes })}
    >
      {(row, at, change) => (
        <>
          <DayField
            label={t('day')}
            value={row.day}
            onChange={(day) => change({ day })}
            error={error(at, 'day')}
            disabled={disabled}
          />
          <DecimalField
            label={t('people')}
            unit={t('minutes')}
            value={row.minutes}
            onChange={(minutes) => change({ minutes })}
            error={error(at, 'minutes')}
            disabled={disabled}
          />
        </>
      )}
    </Rows>
  );
};

export const CounterPart = (part: PartProps) => {
  const t = useMessages(planSettingsMessages);
  return (
    <Section title={t('counter')}>
      <div className="stack">
        <WeekdayTicks
          label={t('counterDays')}
          value={part.form.counterWeekdays}
          onChange={(counterWeekdays) => part.put({ counterWeekdays })}
          disabled={part.disabled}
        />
        <NumberOf {...part} name="forecastDays" label={t('forecastDays')} unit={t('days')} />
      </div>
    </Section>
  );
};

export const Seasons = ({ form, put, errors, disabled }: PartProps) => {
  const t = useMessages(planSettingsMessages);
  const formats = useFormats();
  const field = (at: number, name: string) => ({
    error: errors[`seasons.${String(at)}.${name}`],
    disabled,
  });
  return (
    <Rows<SeasonForm>
      title={t('seasons')}
      lead={t('seasonsLead')}
      add={t('addSeason')}
      rows={form.seasons}
      disabled={disabled}
      nameOf={({ name }) => name}
      newRow={() => newSeason(formats.today())}
      onChange={(seasons) => put({ seasons })}
    >
      {(row, at, change) => (
        <>
          <TextField
            label={t('name')}
            value={row.name}
            maxLength={80}
            onChange={(name) => change({ name })}
            {...field(at, 'name')}
          />
          <DayField
            label={t('from')}
            value={row.fromDay}
            onChange={(fromDay) => change({ fromDay })}
            {...field(at, 'fromDay')}
          />
          <DayField
            label={t('to')}
            value={row.toDay}
            min={row.fromDay}
            onChange={(toDay) => change({ toDay })}
            {...field(at, 'toDay')}
          />
          <DecimalField
            label={t('factor')}
            unit="×"
            value={row.factor}
            onChange={(factor) => change({ factor })}
            {...field(at, 'factor')}
          />
        </>
      )}
    </Rows>
  );
};
