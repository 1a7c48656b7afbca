import { useQuery, useQueryClient, type UseQueryResult } from '@tanstack/react-query';
import { useNamedRequests } from './use-named-requests';
import type { Sent } from './watched';

/** A look at the service that may take a while. */
export type Asked<T> = UseQueryResult<T> & {
  /** Ends the request under way; what was there before stays. */
  readonly stop: () => void;
  /** Under this the service tells how far it is. */
  readonly workId: string | undefined;
};

export interface Question<T> {
  readonly queryKey: readonly unknown[];
  readonly queryFn: (sent: Sent) => Promise<T>;
  readonly enabled?: boolean;
  /** What was asked before stays in view meanwhile. */
  readonly keep?: boolean;
  /** Asks again and again. */
  readonly everyMs?: number | false;
  readonly retry?: false;
  readonly staleTime?: number;
  readonly gcTime?: number;
}

/** Asks something of the service, in a way that shows that it goes on and can be stopped. */
export const useAsk = <T>({ queryFn, keep, everyMs, ...question }: Question<T>): Asked<T> => {
  const queries = useQueryClient();
  const { workId, sent } = useNamedRequests();
  const { queryKey } = question;
  const result = useQuery<T>({
    ...question,
    queryFn: ({ signal }) => queryFn(sent(signal)),
    ...(keep === true ? { placeholderData: (before) => before } : {}),
    ...(everyMs === undefined ? {} : { refetchInterval: everyMs }),
  });
  const stop = (): void => void queries.cancelQueries({ queryKey, exact: true });
  return { ...result, stop, workId };
};
