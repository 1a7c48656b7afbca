import { Button } from '@mantine/core';
import type { components } from '../../api/schema';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { State } from '../../shared/kit/page';
import { batchMessages } from '../../shared/batches/messages';

type Line = components['schemas']['BatchLineView'];

const LineCard = (props: { readonly line: Line; readonly onDraw: (() => void) | undefined }) => {
  const { line, onDraw } = props;
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const enough = compareExact(line.drawnQuantity, line.plannedQuantity) >= 0;
  const next = line.proposedLots[0];
  return (
    <li className={`bench-line ${enough ? 'bench-line-done' : ''}`}>
      <div>
        <strong>{line.itemName}</strong> <span className="quiet">{word(line.role)}</span>
        <div className="quiet">
          {next === undefined && !enough && t('noLots')}
          {next !== undefined && (
            <>
              <code>{next.lotCode}</code>{' '}
              {next.date !== null && t('until', { day: formats.day(next.date) })}
              {next.tankName !== null && ` ${t('inTank', { tank: next.tankName })}`}
            </>
          )}
        </div>
      </div>
      <div className="bench-figure">
        <span className="figure-large">{formats.quantity(line.drawnQuantity, line.unit)}</span>
        <span className="quiet">
          {t('of', { planned: formats.quantity(line.plannedQuantity, line.unit) })}
        </span>
        {enough && <State tone="good">{t('enough')}</State>}
      </div>
      {onDraw !== undefined && (
        <Button
          size="lg"
          variant={enough ? 'default' : 'filled'}
          aria-label={
            enough
              ? `${formats.label(t('drawMore'))} ${line.itemName}`
              : t('drawTitle', { item: line.itemName })
          }
          onClick={onDraw}
        >
          {enough ? t('drawMore') : t('draw')}
        </Button>
      )}
    </li>
  );
};

/** The recipe's lines at the bench: how much is in, and the lot to take next. */
export const BatchLines = (props: {
  readonly lines: readonly Line[];
  readonly onDraw: ((line: Line) => void) | undefined;
}) => (
  <ul className="plain-list">
    {props.lines.map((line) => (
      <LineCard
        key={`${line.itemId}-${line.role}`}
        line={line}
        onDraw={props.onDraw === undefined ? undefined : () => props.onDraw?.(line)}
      />
    ))}
  </ul>
);
