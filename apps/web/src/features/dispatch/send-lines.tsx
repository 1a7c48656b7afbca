import { Button } from '@mantine/core';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { dispatchMessages } from './messages';
import type { SendLine } from './send-draft';

interface Props {
  readonly lines: readonly SendLine[];
  readonly errors: Readonly<Record<string, string>>;
  readonly onChange: (lines: readonly SendLine[]) => void;
}

/** What goes out, lot by lot. */
export const SendLines = ({ lines, errors, onChange }: Props) => {
  const t = useMessages(dispatchMessages);
  const formats = useFormats();
  if (lines.length === 0) return <p className="quiet">{t('noLines')}</p>;
  return (
    <ul className="plain-list">
      {lines.map((line, at) => (
        <li key={line.lotCode} className="row line line-end">
          <div className="grow">
            <strong>{line.itemName}</strong> <code>{line.lotCode}</code>
            <div className="quiet">
              {t('here', { quantity: formats.quantity(line.onHand, line.unit) })}
            </div>
          </div>
          <DecimalField
            label={t('quantity')}
            unit={line.unit}
            value={line.quantity}
            error={errors[`lines.${String(at)}.quantity`] ?? errors[`lines.${String(at)}.lotCode`]}
            onChange={(quantity) =>
              onChange(
                lines.map((one) => (one.lotCode === line.lotCode ? { ...one, quantity } : one)),
              )
            }
          />
          <Button variant="default" onClick={() => onChange(lines.filter((one) => one !== line))}>
            {t('remove')}
          </Button>
        </li>
      ))}
    </ul>
  );
};
