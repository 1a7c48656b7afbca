import { pictureHue } from '../kit/tokens';
import { useMessages } from '../language/catalogue';
import { pictureMessages } from './messages';

export interface Slot {
  readonly key: string;
  readonly name: string;
  readonly count: number;
}

/** A box as its slots, one square a piece, with the names beside them. */
export const BoxSlots = ({ slots }: { readonly slots: readonly Slot[] }) => {
  const t = useMessages(pictureMessages);
  const pieces = slots.flatMap((slot, position) =>
    Array.from({ length: Math.min(slot.count, 200) }, (_, at) => ({
      key: `${slot.key}-${String(at)}`,
      position,
    })),
  );
  const columns = Math.max(2, Math.ceil(Math.sqrt(pieces.length)));
  return (
    <div className="box-slots">
      <div
        className="box-lid"
        aria-hidden="true"
        style={{ gridTemplateColumns: `repeat(${String(columns)}, 1fr)` }}
      >
        {pieces.map(({ key, position }) => (
          <span key={key} style={{ background: pictureHue(position) }}>
            {position + 1}
          </span>
        ))}
      </div>
      <ol className="box-names">
        {slots.map((slot) => (
          <li key={slot.key}>{t('slot', { count: slot.count, name: slot.name })}</li>
        ))}
      </ol>
    </div>
  );
};
