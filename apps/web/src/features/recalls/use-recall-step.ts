import { useBooking } from '../../api/use-api';
import type { Body, PostPath } from '../../api/client';
import type { components } from '../../api/schema';

export type Recall = components['schemas']['RecallView'];

/** Steps of one case, in its own lane. */
export const useRecallStep = (recall: Recall) => {
  const book = useBooking();
  return <P extends PostPath>(path: P, body: Body<P>, label: string) =>
    book({ path, at: { code: recall.code }, body, label, lane: `recall-${recall.code}` });
};
