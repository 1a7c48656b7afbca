import { useMessages } from '../../shared/language/catalogue';
import { SubNav } from '../../shared/kit/sub-nav';
import { traceMessages } from './messages';

export const TraceNav = () => {
  const t = useMessages(traceMessages);
  return (
    <SubNav
      label={t('rooms')}
      pages={[
        { to: '/trace', label: t('find') },
        { to: '/trace/recalls', label: t('recalls') },
        { to: '/trace/complaints', label: t('complaints') },
      ]}
    />
  );
};
