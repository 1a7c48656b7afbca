import { useMessages } from '../language/catalogue';
import { RoomCheck } from './room-check';
import { roomCheckMessages } from './room-messages';

/** The same question inside a dialog about something cold; closed until it is asked. */
export const RoomCheckHere = () => {
  const t = useMessages(roomCheckMessages);
  return (
    <details>
      <summary className="why-mark">{t('title')}</summary>
      <RoomCheck />
    </details>
  );
};
