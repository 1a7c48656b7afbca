import { asProblem } from '../../api/problem';
import { languageHeader } from '../language/i18n';
import type { Booking, Sent } from './queue';

const WAIT_MS = 20_000;

/** 502 to 504 come from what stands before the service; 503 also from a service that is starting. */
const isTransport = (status: number): boolean => status >= 502 && status <= 504;

export const sendBooking = async (booking: Booking): Promise<Sent> => {
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
      signal: AbortSignal.timeout(WAIT_MS),
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
