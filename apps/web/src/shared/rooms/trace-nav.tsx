import { useMessages } from '../language/catalogue';
import { SubNav } from '../kit/sub-nav';
import { roomMessages } from './messages';

export const TraceNav = () => {
  const t = useMessages(roomMessages);
  return (
    <SubNav
      label={t('trace')}
      pages={[
        { to: '/trace', label: t('find') },
        { to: '/trace/recalls', label: t('recalls') },
        { to: '/trace/complaints', label: t('complaints') },
      ]}
    />
  );
};
