import { ActionIcon, TextInput } from '@mantine/core';
import { IconCalculator, IconScale } from '@tabler/icons-react';
import { useState } from 'react';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import type { FieldProps } from './fields';
import { Keypad } from './keypad';
import { kitMessages } from './messages';

interface Props extends FieldProps {
  readonly unit: string;
  /** The keypad offers tare and weigh-in steps. */
  readonly weigh?: boolean;
}

/** The service stores quantities with three decimals: 1000.000 is shown as 1000. */
const withoutZeros = (value: string): string =>
  /\.\d{3,}$/.test(value) ? value.replace(/\.?0+$/, '') : value;

/**
 * A number with its unit. The value is a decimal string with a point, or empty; while the text can't
 * be read as a number the value stays empty and the field says so.
 */
export const DecimalField = (props: Props) => {
  const { label, value, onChange, unit, error, weigh = false } = props;
  const t = useMessages(kitMessages);
  const formats = useFormats();
  const shown = (text: string): string =>
    withoutZeros(text).replace('.', formats.number('1.5').charAt(1));
  const [typed, setTyped] = useState<string>();
  const [keypad, setKeypad] = useState(false);
  const unread = typed !== undefined && typed.trim() !== '' && formats.parse(typed) === undefined;
  const take = (text: string): void => {
    setTyped(text);
    onChange(formats.parse(text) ?? '');
  };
  return (
    <>
      <TextInput
        label={`${label} (${unit})`}
        description={props.hint}
        value={typed ?? shown(value)}
        error={unread ? t('notNumber') : error}
        disabled={props.disabled === true}
        withAsterisk={props.required === true}
        aria-required={props.required === true}
        inputMode="decimal"
        autoComplete="off"
        classNames={{ input: 'figure-input' }}
        onChange={(event) => take(event.currentTarget.value)}
        onBlur={() => {
          if (!unread) setTyped(undefined);
        }}
        rightSectionWidth={props.disabled === true ? 0 : 48}
        rightSection={
          props.disabled === true ? null : (
            <ActionIcon
              variant="subtle"
              size={44}
              aria-label={t('keypad', { field: label })}
              onClick={() => setKeypad(true)}
            >
              {weigh ? <IconScale size={22} /> : <IconCalculator size={22} />}
            </ActionIcon>
          )
        }
      />
      {keypad && (
        <Keypad
          title={label}
          unit={unit}
          value={value}
          weigh={weigh}
          onClose={() => setKeypad(false)}
          onDone={(result) => {
            setTyped(undefined);
            setKeypad(false);
            onChange(result);
          }}
        />
      )}
    </>
  );
};
