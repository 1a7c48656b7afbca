import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useSession } from '../app/session';
import { book, type Booked } from '../shared/offline/bookings';
import {
  type Body,
  fill,
  type GetInit,
  type GetPath,
  type PostPath,
  read,
  type Read,
  type Written,
} from './client';
import { type Asked, type Question, useAsk } from './use-ask';
import type { Watched } from './watched';

/** Reads a path of the service and keeps it fresh. */
export const useRead = <P extends GetPath>(
  path: P,
  init?: GetInit<P>,
  options: Pick<Question<unknown>, 'enabled' | 'keep' | 'everyMs'> = {},
): Asked<Read<P>> =>
  useAsk({
    ...options,
    queryKey: [path, init ?? null],
    queryFn: (sent) => read(path, { ...init, ...sent } as unknown as GetInit<P>),
  });

export interface BookingOf<P extends PostPath> {
  readonly path: P;
  readonly at?: Readonly<Record<string, string>>;
  readonly body: Body<P>;
  /** What it is, in words, for the list of what waits. */
  readonly label: string;
  readonly lane: string;
}

/**
 * Books something that changes stock. It goes through the tablet's queue, so that it is kept when
 * the network drops and happens once. Afterwards everything on screen is read again: one booking
 * touches stock, dates, counts and the way of the goods.
 */
export const useBooking = () => {
  const session = useSession();
  const queries = useQueryClient();
  return async <P extends PostPath>(
    booking: BookingOf<P>,
    watched?: Watched,
  ): Promise<Booked<Written<P>>> => {
    const done = await book<Written<P>>(
      {
        path: fill(booking.path, booking.at),
        body: booking.body ?? {},
        label: booking.label,
        lane: booking.lane,
        userId: session.userId,
      },
      watched,
    );
    await queries.invalidateQueries();
    return done;
  };
};

/** Changes something that is no booking; afterwards everything on screen is read again. */
export const useChange = <A, R>(change: (input: A) => Promise<R>) => {
  const queries = useQueryClient();
  return useMutation({ mutationFn: change, onSuccess: () => queries.invalidateQueries() });
};
