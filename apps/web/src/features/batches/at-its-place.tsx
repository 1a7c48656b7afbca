import { Navigate, useLocation } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { batchPage, isPageOfBatch } from '../../shared/batches/place-of-batch';
import type { Batch } from './use-batch-booking';

/** A code or an old link knows nothing of the kind: the batch is shown at the place that makes it. */
export const AtItsPlace = (props: { readonly batch: Batch; readonly children: ReactNode }) => {
  const { id, kind } = props.batch;
  const here = useLocation({ select: ({ pathname }) => pathname });
  const to = batchPage(kind);
  // On the way to another screen the path is that of the other one already.
  if (here !== to.replace('$id', id) && isPageOfBatch(here, id))
    return <Navigate to={to} params={{ id }} replace />;
  return props.children;
};
