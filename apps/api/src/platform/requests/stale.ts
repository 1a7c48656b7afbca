import { RefusalError } from '../problems/refusal-error';
import { named, say } from '../../domain/words/say';

/** Refuses a change to something that another person changed meanwhile. */
export const refuseIfStale = (what: string, seen: number, version: number): void => {
  if (seen === version) return;
  throw new RefusalError({
    code: 'stale-version',
    detail: say`This ${named(what)} was changed by someone else meanwhile. Read it again, then change it.`,
    facts: { seen, version },
  });
};
