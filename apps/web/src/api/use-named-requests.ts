import { useState } from 'react';
import { newId } from './new-id';
import { type Sent, sentWith } from './watched';

/**
 * Names each request of a look by itself: hanging up on one must not end the next, which may be
 * there before the worker between page and service hears of it.
 */
export const useNamedRequests = () => {
  const [workId, setWorkId] = useState<string>();
  const sent = (signal: AbortSignal): Sent => {
    const id = newId();
    setWorkId(id);
    return sentWith({ signal, id });
  };
  return { workId, sent };
};
