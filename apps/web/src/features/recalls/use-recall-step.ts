import { useBooking } from '../../api/use-api';
import type { Body, PostPath } from '../../api/client';
import type { components } from '../../api/schema';
import type { Watched } from '../../api/watched';

export type Recall = components['schemas']['RecallView'];

/** Steps of one case, in its own lane; each goes through its whole scope and can be stopped. */
export const useRecallStep = (recall: Recall) => {
  const book = useBooking();
  return <P extends PostPath>(path: P, body: Body<P>, label: string, watched: Watched) =>
    book({ path, at: { code: recall.code }, body, label, lane: `recall-${recall.code}` }, watched);
};
