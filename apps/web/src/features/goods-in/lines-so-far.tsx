import { Button } from '@mantine/core';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Section, State } from '../../shared/kit/page';
import type { LineDraft } from './line-draft';
import { goodsInMessages } from './messages';

interface Props {
  readonly lines: readonly LineDraft[];
  readonly onEdit: (at: number) => void;
  readonly onRemove: (at: number) => void;
}

/** The lines that are on the delivery already, before it is booked. */
export const LinesSoFar = ({ lines, onEdit, onRemove }: Props) => {
  const t = useMessages(goodsInMessages);
  const formats = useFormats();
  if (lines.length === 0) return null;
  return (
    <Section title={t('soFar')}>
      <ol className="plain-list">
        {lines.map((line, at) => (
          <li key={`${String(at)}-${line.supplierLotCode}`} className="row line">
            <strong>{line.itemName}</strong>
            <code>{line.supplierLotCode}</code>
            <span>{formats.quantity(line.quantity, line.unit)}</span>
            {line.date !== '' && <span>{formats.day(line.date)}</span>}
            <span>{formats.money(line.price)}</span>
            {line.refused && (
              <State tone="warn">{t('refusedLine', { why: line.refusalReason })}</State>
            )}
            <Button variant="default" onClick={() => onEdit(at)}>
              {t('changeLine')}
            </Button>
            <Button variant="default" onClick={() => onRemove(at)}>
              {t('removeLine')}
            </Button>
          </li>
        ))}
      </ol>
    </Section>
  );
};
