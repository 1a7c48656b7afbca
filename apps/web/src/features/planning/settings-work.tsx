import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { Section } from '../../shared/kit/page';
import type { SettingsForm } from './settings-form';
import { planSettingsMessages } from './settings-messages';
import { WeekdayTicks } from './weekday-ticks';

export interface PartProps {
  readonly form: SettingsForm;
  readonly put: (part: Partial<SettingsForm>) => void;
  readonly errors: Readonly<Record<string, string>>;
  readonly disabled: boolean;
}

type NumberName = {
  [K in keyof SettingsForm]: SettingsForm[K] extends string ? K : never;
}[keyof SettingsForm];

/** One number of the form, at its own field with its own refusal. */
export const NumberOf = (
  props: PartProps & {
    readonly name: NumberName;
    readonly label: string;
    readonly unit: string;
    readonly hint?: string | undefined;
  },
) => (
  <DecimalField
    label={props.label}
    unit={props.unit}
    hint={props.hint}
    value={props.form[props.name]}
    onChange={(text) => props.put({ [props.name]: text })}
    error={props.errors[props.name]}
    disabled={props.disabled}
  />
);

export const WeekPart = (part: PartProps) => {
  const t = useMessages(planSettingsMessages);
  const formats = useFormats();
  const hours = Number(part.form.peopleMinutesPerDay) / 60;
  return (
    <Section title={t('week')}>
      <div className="stack">
        <WeekdayTicks
          label={t('workDays')}
          value={part.form.workWeekdays}
          onChange={(workWeekdays) => part.put({ workWeekdays })}
          disabled={part.disabled}
        />
        <NumberOf
          {...part}
          name="peopleMinutesPerDay"
          label={t('people')}
          unit={t('minutes')}
          hint={t('asHours', { hours: formats.number(hours.toFixed(2), 2) })}
        />
        <NumberOf {...part} name="horizonDays" label={t('horizon')} unit={t('days')} />
        <NumberOf {...part} name="reservationHours" label={t('reservation')} unit={t('hours')} />
        <NumberOf {...part} name="extraHourPrice" label={t('extraHour')} unit={formats.currency} />
      </div>
    </Section>
  );
};

export const ToolsPart = (part: PartProps) => {
  const t = useMessages(planSettingsMessages);
  const formats = useFormats();
  return (
    <Section title={t('tools')}>
      <div className="stack">
        <NumberOf {...part} name="mouldDays" label={t('mouldDays')} unit={t('days')} />
        <NumberOf {...part} name="mouldPrice" label={t('mouldPrice')} unit={formats.currency} />
        <NumberOf {...part} name="tankMinutesPerDay" label={t('tankDay')} unit={t('minutes')} />
        <NumberOf {...part} name="tankMinutesPerTray" label={t('tankTray')} unit={t('minutes')} />
      </div>
    </Section>
  );
};
