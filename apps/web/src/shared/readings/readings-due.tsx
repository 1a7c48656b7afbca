import { Button } from '@mantine/core';
import { useRead } from '../../api/use-api';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { Loaded } from '../kit/loaded';
import { State } from '../kit/page';
import { diaryMessages } from './messages';

/** Places whose reading is due, each with the way to write it. */
export const ReadingsDue = (props: {
  readonly nothing: string;
  readonly onTake: ((placeId: string) => void) | undefined;
}) => {
  const t = useMessages(diaryMessages);
  const formats = useFormats();
  const due = useRead('/api/readings/due');
  return (
    <Loaded query={due}>
      {(rows) => {
        const overdue = rows.filter((row) => row.overdue);
        if (overdue.length === 0) return <p className="quiet">{props.nothing}</p>;
        return (
          <ul className="plain-list">
            {overdue.map((row) => (
              <li key={row.placeId} className="row line due-line">
                <span className="row">
                  <strong>{row.placeName}</strong>
                  <State tone="caution">{t('overdue')}</State>
                  <span className="quiet">
                    {row.lastAt === null
                      ? t('never')
                      : t('lastAt', { at: formats.instant(row.lastAt) })}
                  </span>
                </span>
                {props.onTake !== undefined && (
                  <Button
                    variant="default"
                    aria-label={`${formats.label(t('take'))} ${row.placeName}`}
                    onClick={() => props.onTake?.(row.placeId)}
                  >
                    {t('take')}
                  </Button>
                )}
              </li>
            ))}
          </ul>
        );
      }}
    </Loaded>
  );
};
