import { asProblem } from '../../api/problem';
import { translateWith } from '../language/catalogue';
import { languageHeader } from '../language/i18n';
import { offlineMessages } from './messages';
import type { Booking, Sent } from './queue';

const WAIT_MS = 20_000;
/** While somebody looks on who can stop it. */
const WATCHED_WAIT_MS = 180_000;

/** 502 to 504 come from what stands before the service; 503 also from a service that is starting. */
const isTransport = (status: number): boolean => status >= 502 && status <= 504;

const send = async (booking: Booking, signal: AbortSignal): Promise<Sent> => {
  let response: Response;
  try {
    response = await fetch(booking.path, {
      method: 'POST',
      headers: {
        'Content-Type': 'application/json',
        'Idempotency-Key': booking.key,
        ...languageHeader(),
      },
      body: JSON.stringify(booking.body),
      signal,
    });
  } catch {
    return { kind: 'unreachable' };
  }
  if (isTransport(response.status)) return { kind: 'unreachable' };
  if (response.status === 401) return { kind: 'signed-out' };
  const answer: unknown = await response.json().catch(() => undefined);
  return response.ok
    ? { kind: 'done', answer }
    : { kind: 'refused', problem: asProblem(answer, response.status) };
};

export const sendBooking = (booking: Booking): Promise<Sent> =>
  send(booking, AbortSignal.timeout(WAIT_MS));

/** The service alone knows whether the stop came before the booking: it decides, for good. */
const stop = async (booking: Booking): Promise<Sent> => {
  try {
    const response = await fetch(`/api/work/${booking.key}`, {
      method: 'DELETE',
      signal: AbortSignal.timeout(WAIT_MS),
    });
    const { outcome } = (await response.json()) as { readonly outcome?: string };
    if (outcome === 'stopped') return { kind: 'stopped' };
    // Too late: sent once more it is not booked twice, and gets its answer.
    if (outcome === 'booked') return await sendBooking(booking);
  } catch {
    // Told below: nobody knows.
  }
  const t = translateWith(offlineMessages);
  const problem = { type: 'about:blank', title: t('notKnown'), status: 0, detail: t('lookAgain') };
  return { kind: 'refused', problem };
};

/** Sends a booking that somebody looks on at and may stop. */
export const sendWatched = async (booking: Booking, signal: AbortSignal): Promise<Sent> => {
  const hangUp = new AbortController();
  const timer = setTimeout(() => hangUp.abort(), WATCHED_WAIT_MS);
  const onStop = (): void => hangUp.abort();
  const isStopped = (): boolean => signal.aborted;
  signal.addEventListener('abort', onStop);
  try {
    if (isStopped()) return await stop(booking);
    const sent = await send(booking, hangUp.signal);
    return sent.kind === 'unreachable' && isStopped() ? await stop(booking) : sent;
  } finally {
    clearTimeout(timer);
    signal.removeEventListener('abort', onStop);
  }
};
