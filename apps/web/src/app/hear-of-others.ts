import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { useRead } from '../api/use-api';
import { useOnline } from './use-online';

const LOOK_EVERY_MS = 3000;

/**
 * What people at the bench act on together. Long looks as traces and plans are not among them, nor
 * what is edited as a whole on its screen.
 */
const SHARED = new Set<unknown>([
  '/api/batches',
  '/api/batches/{id}',
  '/api/lots',
  '/api/lots/{code}',
  '/api/lots/{code}/movements',
  '/api/lots/{code}/label-runs',
  '/api/deliveries',
  '/api/deliveries/{id}',
  '/api/tanks',
  '/api/moulds',
  '/api/orders',
  '/api/dispatches',
  '/api/readings/due',
]);

/**
 * Reads again what is on screen when anybody booked something, at whatever device. One small
 * question for the whole app, while it is in view and online; what is typed stays as it is.
 */
export const useHearOfOthers = (): void => {
  const queries = useQueryClient();
  const online = useOnline();
  const { data } = useRead('/api/changes', undefined, { everyMs: online ? LOOK_EVERY_MS : false });
  const mark = data?.mark;
  const seen = useRef<string>(undefined);
  useEffect(() => {
    if (mark === undefined || mark === seen.current) return;
    const isFirst = seen.current === undefined;
    seen.current = mark;
    if (isFirst) return;
    void queries.invalidateQueries({ predicate: ({ queryKey }) => SHARED.has(queryKey[0]) });
  }, [mark, queries]);
};
