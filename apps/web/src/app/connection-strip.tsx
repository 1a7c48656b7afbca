import { Link } from '@tanstack/react-router';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { bookingsNow, sendAll, watchBookings } from '../shared/offline/bookings';
import { useMessages } from '../shared/language/catalogue';
import { appMessages } from './messages';
import { useOnline } from './use-online';
import { useQueryClient } from '@tanstack/react-query';

const TRY_EVERY_MS = 15_000;

/** Undefined for the moment until the tablet's own store has been read. */
export const useWaitingBookings = () => useSyncExternalStore(watchBookings, bookingsNow);

/** Says that there is no connection, and what waits on this device; sends it when it can. */
export const ConnectionStrip = ({ userId }: { readonly userId: string }) => {
  const t = useMessages(appMessages);
  const online = useOnline();
  const queries = useQueryClient();
  const waiting = useWaitingBookings() ?? [];
  const refused = waiting.filter((booking) => booking.refused !== undefined).length;
  const [sentOnce, setSentOnce] = useState(false);
  useEffect(() => {
    if (!online) return;
    let any = false;
    const go = (): void => {
      void sendAll(userId, ({ sent }) => {
        any ||= sent.kind === 'done';
      }).then(() => {
        setSentOnce(true);
        return any ? queries.invalidateQueries() : undefined;
      });
    };
    go();
    const timer = setInterval(() => {
      if (bookingsNow()?.some((booking) => booking.refused === undefined)) go();
    }, TRY_EVERY_MS);
    return () => clearInterval(timer);
  }, [online, userId, queries]);
  if (online && (waiting.length === 0 || !sentOnce)) return null;
  return (
    <div className="strip" role="status">
      {!online && <span>{t('offline')}</span>}
      {waiting.length > 0 && (
        <>
          <span>{t('waitingHere', { count: waiting.length })}</span>
          {refused > 0 && <strong>{t('refusedHere', { count: refused })}</strong>}
          <Link to="/waiting" className="strip-link">
            {t('look')}
          </Link>
        </>
      )}
    </div>
  );
};
