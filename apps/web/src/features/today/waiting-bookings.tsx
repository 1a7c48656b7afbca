import { Button } from '@mantine/core';
import { useWaitingBookings } from '../../app/connection-strip';
import { useSession } from '../../app/session';
import { ProblemError } from '../../api/problem';
import { again, forget, sendAll } from '../../shared/offline/bookings';
import type { Booking } from '../../shared/offline/queue';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Page, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { todayMessages } from './messages';

const Waiting = (props: { readonly booking: Booking; readonly blocked: boolean }) => {
  const { booking, blocked } = props;
  const t = useMessages(todayMessages);
  const formats = useFormats();
  return (
    <li className="sheet stack">
      <div className="row">
        <strong>{booking.label}</strong>
        <State tone={booking.refused === undefined ? 'caution' : 'warn'}>
          {booking.refused !== undefined ? t('refused') : blocked ? t('blocked') : t('waits')}
        </State>
        <span className="quiet">
          {t('booked')} {formats.instant(booking.bookedAt)}
        </span>
      </div>
      {booking.refused !== undefined && (
        <>
          <ProblemNotice error={new ProblemError(booking.refused)}>
            <p>{t('whyRefused')}</p>
          </ProblemNotice>
          <div className="row">
            <Button onClick={() => void again(booking)}>{t('again')}</Button>
            <Button variant="default" onClick={() => void forget(booking)}>
              {t('drop')}
            </Button>
          </div>
        </>
      )}
    </li>
  );
};

/** Everything that was booked here and is not yet at the service. */
const WaitingBookings = () => {
  const t = useMessages(todayMessages);
  const session = useSession();
  const waiting = useWaitingBookings();
  const refusedLanes = new Set(
    waiting?.filter(({ refused }) => refused !== undefined).map(({ lane }) => lane),
  );
  return (
    <Page
      title={t('waitingTitle')}
      lead={t('waitingLead')}
      actions={
        waiting !== undefined &&
        waiting.length > 0 && (
          <Button onClick={() => void sendAll(session.userId)}>{t('sendNow')}</Button>
        )
      }
    >
      {waiting?.length === 0 && <p>{t('waitingNone')}</p>}
      {waiting !== undefined && waiting.length > 0 && (
        <ol className="plain-list stack">
          {waiting.map((booking) => (
            <Waiting key={booking.key} booking={booking} blocked={refusedLanes.has(booking.lane)} />
          ))}
        </ol>
      )}
    </Page>
  );
};

export default WaitingBookings;
