import { useFormats } from '../../shared/formats/use-formats';
import { TickField } from '../../shared/kit/fields';
import { WEEK } from './settings-form';

/** Days of the week, Monday first, each to be ticked. */
export const WeekdayTicks = (props: {
  readonly label: string;
  readonly value: readonly number[];
  readonly onChange: (days: readonly number[]) => void;
  readonly disabled: boolean;
}) => {
  const formats = useFormats();
  return (
    <fieldset className="one-of">
      <legend>{props.label}</legend>
      {WEEK.map((day) => (
        <TickField
          key={day}
          label={formats.dayOfWeek(day)}
          checked={props.value.includes(day)}
          disabled={props.disabled}
          onChange={(on) =>
            props.onChange(on ? [...props.value, day] : props.value.filter((one) => one !== day))
          }
        />
      ))}
    </fieldset>
  );
};
