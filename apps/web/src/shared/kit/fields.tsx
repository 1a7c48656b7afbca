import { newId } from '../../api/new-id';
import { NativeSelect, Textarea, TextInput } from '@mantine/core';
import { useId, useState, type ReactNode } from 'react';

export interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly error?: ReactNode;
  readonly hint?: string | undefined;
  readonly required?: boolean;
  readonly disabled?: boolean;
}

const shared = (props: FieldProps) => ({
  label: props.label,
  value: props.value,
  error: props.error,
  description: props.hint,
  withAsterisk: props.required === true,
  'aria-required': props.required === true,
  disabled: props.disabled === true,
});

export const TextField = (
  props: FieldProps & {
    readonly type?: 'text' | 'password' | 'email' | 'tel';
    readonly autoComplete?: string;
    readonly maxLength?: number;
  },
) => (
  <TextInput
    {...shared(props)}
    type={props.type ?? 'text'}
    autoComplete={props.autoComplete ?? 'off'}
    maxLength={props.maxLength ?? 500}
    onChange={(event) => props.onChange(event.currentTarget.value)}
  />
);

export const LongField = (props: FieldProps) => (
  <Textarea
    {...shared(props)}
    autosize
    minRows={2}
    onChange={(event) => props.onChange(event.currentTarget.value)}
  />
);

/** The browser's own day picker: it knows the reader's calendar, fingers and screen reader. */
export const DayField = (props: FieldProps & { readonly min?: string; readonly max?: string }) => (
  <TextInput
    {...shared(props)}
    type="date"
    {...(props.min === undefined ? {} : { min: props.min })}
    {...(props.max === undefined ? {} : { max: props.max })}
    onChange={(event) => props.onChange(event.currentTarget.value)}
  />
);

export interface Choice {
  readonly value: string;
  readonly label: string;
}

export const ChoiceField = (
  props: FieldProps & { readonly choices: readonly Choice[]; readonly empty?: string },
) => (
  <NativeSelect
    {...shared(props)}
    data={[
      ...(props.empty === undefined ? [] : [{ value: '', label: props.empty }]),
      ...props.choices,
    ]}
    onChange={(event) => props.onChange(event.currentTarget.value)}
  />
);

export const TickField = (props: {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly disabled?: boolean;
  readonly error?: string | undefined;
}) => {
  const errorId = useId();
  const wrong = props.error !== undefined;
  return (
    <div>
      <label className="tick">
        <input
          type="checkbox"
          checked={props.checked}
          disabled={props.disabled === true}
          aria-invalid={wrong}
          {...(wrong ? { 'aria-describedby': errorId } : {})}
          onChange={(event) => props.onChange(event.currentTarget.checked)}
        />
        <span>{props.label}</span>
      </label>
      {wrong && (
        <p id={errorId} role="alert" className="field-error">
          {props.error}
        </p>
      )}
    </div>
  );
};

/** A few choices side by side, each a target of its own. */
export const OneOf = (props: {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onChange: (value: string) => void;
}) => {
  const [name] = useState(() => newId());
  return (
    <fieldset className="one-of">
      <legend>{props.label}</legend>
      {props.choices.map((choice) => (
        <label key={choice.value}>
          <input
            type="radio"
            name={name}
            value={choice.value}
            checked={props.value === choice.value}
            onChange={() => props.onChange(choice.value)}
          />
          <span>{choice.label}</span>
        </label>
      ))}
    </fieldset>
  );
};
