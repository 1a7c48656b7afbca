import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';

interface Props {
  readonly rows: number;
  readonly columns: number;
  /** Cavities from 1, by rows, that hold a piece; the rest of the tray stayed empty. */
  readonly filled: number;
  readonly rejects: readonly number[];
  readonly onChange?: (rejects: readonly number[]) => void;
}

/** A tray as its cavities: a tap marks the piece as a reject, another takes the mark away. */
export const Tray = ({ rows, columns, filled, rejects, onChange }: Props) => {
  const t = useMessages(pictureMessages);
  const formats = useFormats();
  const marked = new Set(rejects);
  const toggle = (cavity: number): void => {
    const next = new Set(marked);
    if (!next.delete(cavity)) next.add(cavity);
    onChange?.([...next].sort((a, b) => a - b));
  };
  // Cavities to be tapped are full targets, and a wide tray scrolls; to be looked at they all fit.
  const least = onChange === undefined ? 0 : 44;
  return (
    <div className="tray-frame">
      {onChange !== undefined && <p className="quiet">{t('tapRejects')}</p>}
      <div
        className="tray"
        role="group"
        style={{
          gridTemplateColumns: `repeat(${String(columns)}, minmax(${String(least)}px, 56px))`,
        }}
      >
        {Array.from({ length: rows * columns }, (_, at) => at + 1).map((cavity) => {
          const state = cavity > filled ? 'empty' : marked.has(cavity) ? 'rejected' : 'good';
          return (
            <button
              key={cavity}
              type="button"
              className={`cavity cavity-${state}`}
              disabled={onChange === undefined || state === 'empty'}
              aria-pressed={state === 'rejected'}
              aria-label={`${formats.label(t('cavity', { number: cavity }))} ${t(state)}`}
              onClick={() => toggle(cavity)}
            >
              {state === 'rejected' ? '✕' : cavity}
            </button>
          );
        })}
      </div>
      <p aria-live="polite">
        {t('goodCount', { count: filled - marked.size })} ·{' '}
        {t('rejectCount', { count: marked.size })}
      </p>
    </div>
  );
};
