import { Button } from '@mantine/core';
import { useState } from 'react';
import { Dialog } from './dialog';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';
import { net, press, start, type Key } from './weighing';

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0'] as const;

interface Props {
  readonly title: string;
  readonly unit: string;
  readonly value: string;
  /** Offers tare and several weighings. */
  readonly weigh: boolean;
  readonly onDone: (value: string) => void;
  readonly onClose: () => void;
}

const Steps = (props: {
  readonly steps: readonly string[];
  readonly tare: string;
  readonly unit: string;
  readonly onKey: (key: Key) => void;
}) => {
  const t = useMessages(kitMessages);
  const formats = useFormats();
  const shown = (value: string): string => `${formats.number(value)} ${props.unit}`;
  return (
    <ol className="weigh-steps" aria-label={t('steps')}>
      {props.tare !== '0' && (
        <li>
          {t('tare')} −{shown(props.tare)}
        </li>
      )}
      {props.steps.map((step, position) => (
        <li key={`${position}-${step}`}>
          <button
            type="button"
            aria-label={t('removeStep', { value: shown(step) })}
            onClick={() => props.onKey({ kind: 'remove', position })}
          >
            {shown(step)} ✕
          </button>
        </li>
      ))}
    </ol>
  );
};

/** Large keys for wet or gloved hands, with tare and weigh-in steps where something is weighed. */
export const Keypad = ({ title, unit, value, weigh, onDone, onClose }: Props) => {
  const t = useMessages(kitMessages);
  const formats = useFormats();
  const [weighing, setWeighing] = useState(() => start(value));
  const onKey = (key: Key): void => setWeighing((now) => press(now, key));
  const point = formats.number('1.5').charAt(1);
  const typeDigits = (event: React.KeyboardEvent): void => {
    if (/^[0-9]$/.test(event.key)) onKey({ kind: 'character', character: event.key });
    if (event.key === ',' || event.key === '.') onKey({ kind: 'character', character: '.' });
    if (event.key === 'Backspace') onKey({ kind: 'backspace' });
  };
  return (
    <Dialog onClose={onClose} title={title} size="sm">
      <div onKeyDown={typeDigits}>
        <output className="keypad-value" aria-live="polite">
          <span className="quiet">{weigh ? t('gross') : title}</span>
          <strong>{weighing.entry === '' ? '0' : weighing.entry.replace('.', point)}</strong> {unit}
          {weigh && (
            <span className="keypad-net">
              {t('net')} {formats.number(net(weighing))} {unit}
            </span>
          )}
        </output>
        {weigh && <Steps steps={weighing.steps} tare={weighing.tare} unit={unit} onKey={onKey} />}
        <div className="keypad">
          {DIGITS.map((character) => (
            <button
              key={character}
              type="button"
              onClick={() => onKey({ kind: 'character', character })}
            >
              {character === '.' ? point : character}
            </button>
          ))}
          <button
            type="button"
            aria-label={t('backspace')}
            onClick={() => onKey({ kind: 'backspace' })}
          >
            ⌫
          </button>
        </div>
        <div className="keypad-foot">
          <Button variant="default" onClick={() => onKey({ kind: 'clear' })}>
            {t('clear')}
          </Button>
          {weigh && (
            <>
              <Button variant="default" onClick={() => onKey({ kind: 'tare' })}>
                {t('tare')}
              </Button>
              <Button variant="default" onClick={() => onKey({ kind: 'step' })}>
                {t('addStep')}
              </Button>
            </>
          )}
          <Button data-autofocus onClick={() => onDone(net(weighing))}>
            {t('done')}
          </Button>
        </div>
      </div>
    </Dialog>
  );
};
