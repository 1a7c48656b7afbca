import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Dialog } from '../../shared/kit/dialog';
import { api, must } from '../../api/client';
import { useRead } from '../../api/use-api';
import { useSession } from '../../app/session';
import { bookingsNow } from '../../shared/offline/bookings';
import { useMessages } from '../../shared/language/catalogue';
import { OneOf, TextField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { useFocusBack } from '../../shared/kit/use-focus-back';
import { accessMessages } from './messages';

const usePeople = () => {
  const session = useSession();
  const users = useRead('/api/users');
  const others = users.data?.filter(
    (user) => user.active && user.hasPin && user.id !== session.userId,
  );
  return { users, others: others ?? [] };
};

/** Another person takes over at this device with their bench PIN, or everybody leaves it. */
const SwitchPerson = ({ onClose }: { readonly onClose: () => void }) => {
  useFocusBack();
  const t = useMessages(accessMessages);
  const queries = useQueryClient();
  const { users, others } = usePeople();
  const [userId, setUserId] = useState('');
  const [pin, setPin] = useState('');
  const [error, setError] = useState<unknown>();
  const takeOver = async (): Promise<void> => {
    try {
      const session = await must(api.POST('/api/session/switch', { body: { userId, pin } }));
      queries.setQueryData(['/api/session', null], session);
      await queries.invalidateQueries();
      onClose();
    } catch (cause) {
      setError(cause);
      setPin('');
    }
  };
  const leave = async (): Promise<void> => {
    await must(api.DELETE('/api/session')).catch(() => undefined);
    if ('serviceWorker' in navigator) navigator.serviceWorker.controller?.postMessage('forget');
    queries.clear();
    window.location.assign('/');
  };
  return (
    <Dialog onClose={onClose} title={t('switchTitle')}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void takeOver();
        }}
      >
        <Loaded query={users}>
          {() =>
            others.length === 0 ? (
              <p>{t('noPins')}</p>
            ) : (
              <>
                <p className="quiet">{t('switchLead')}</p>
                <OneOf
                  label={t('person')}
                  value={userId}
                  onChange={setUserId}
                  choices={others.map(({ id, name }) => ({ value: id, label: name }))}
                />
                <TextField
                  label={t('pin')}
                  type="password"
                  value={pin}
                  onChange={setPin}
                  autoComplete="off"
                  required
                />
              </>
            )
          }
        </Loaded>
        <ProblemNotice error={error} />
        {bookingsNow()?.length !== 0 && <p className="caution">{t('stillWaiting')}</p>}
        <div className="row">
          {others.length > 0 && (
            <Button type="submit" disabled={userId === '' || pin.length < 4}>
              {t('takeOver')}
            </Button>
          )}
          <Button variant="default" onClick={() => void leave()}>
            {t('signOut')}
          </Button>
        </div>
      </form>
    </Dialog>
  );
};

export default SwitchPerson;
