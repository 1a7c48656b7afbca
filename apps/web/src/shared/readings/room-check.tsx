import { useState } from 'react';
import { api, must } from '../../api/client';
import { useAsk } from '../../api/use-ask';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { DecimalField } from '../kit/decimal-field';
import { Dialog } from '../kit/dialog';
import { Loaded } from '../kit/loaded';
import { Caution, Fact, Facts, State } from '../kit/page';
import { useFocusBack } from '../kit/use-focus-back';
import { useSettled } from '../kit/use-settled';
import { roomCheckMessages } from './room-messages';

const EMPTY = { productC: '', roomC: '', humidityPercent: '' };

const FIELDS = [
  ['productC', 'product', '°C'],
  ['roomC', 'room', '°C'],
  ['humidityPercent', 'humidity', '%'],
] as const;

const isWhole = (readings: typeof EMPTY): boolean =>
  Object.values(readings).every((value) => value !== '');

/** Whether water settles on a cold product in a room: asked before it is unpacked. */
export const RoomCheck = () => {
  const t = useMessages(roomCheckMessages);
  const formats = useFormats();
  const [typed, setTyped] = useState(EMPTY);
  const settled = useSettled(typed);
  const verdict = useAsk({
    queryKey: ['/api/tempering/room', settled],
    enabled: isWhole(settled),
    retry: false,
    queryFn: ({ signal }) => must(api.POST('/api/tempering/room', { body: settled, signal })),
  });
  return (
    <div className="stack">
      <p>{t('lead')}</p>
      {FIELDS.map(([key, name, unit]) => (
        <DecimalField
          key={key}
          label={t(name)}
          unit={unit}
          value={typed[key]}
          onChange={(value) => setTyped((now) => ({ ...now, [key]: value }))}
        />
      ))}
      {isWhole(typed) && (
        <Loaded query={verdict}>
          {({ dewPointC, condenses }) => (
            <div role="status">
              <Facts>
                <Fact name={t('dewPoint')}>{formats.number(dewPointC, 1)} °C</Fact>
              </Facts>
              <p>
                <State tone={condenses ? 'warn' : 'good'}>{condenses ? t('wet') : t('dry')}</State>{' '}
                {condenses ? t('wetAdvice', { dew: formats.number(dewPointC, 1) }) : t('dryAdvice')}
              </p>
              <Caution>{t('caution')}</Caution>
            </div>
          )}
        </Loaded>
      )}
    </div>
  );
};

export const RoomCheckDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(roomCheckMessages);
  useFocusBack();
  return (
    <Dialog title={t('title')} onClose={onClose}>
      <RoomCheck />
    </Dialog>
  );
};
