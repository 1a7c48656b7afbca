import { Link } from '@tanstack/react-router';
import { useMessages } from '../language/catalogue';
import { startMessages } from './messages';
import type { StartKind } from './start-form';

/** Leads from a thing on screen to everything that came of it, and from there to a recall. */
export const TraceLink = ({ kind, id }: { readonly kind: StartKind; readonly id: string }) => {
  const t = useMessages(startMessages);
  return (
    <Link to="/trace/from" search={{ kind, id }} className="button-link">
      {t('traceThis')}
    </Link>
  );
};
