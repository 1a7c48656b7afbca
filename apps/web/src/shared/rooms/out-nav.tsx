import { useMessages } from '../language/catalogue';
import { SubNav } from '../kit/sub-nav';
import { roomMessages } from './messages';

export const OutNav = () => {
  const t = useMessages(roomMessages);
  return (
    <SubNav
      label={t('out')}
      pages={[
        { to: '/out', label: t('sent') },
        { to: '/out/orders', label: t('orders') },
        { to: '/out/plan', label: t('plan') },
        { to: '/out/forecast', label: t('forecast') },
        { to: '/out/plan/settings', label: t('planRules') },
      ]}
    />
  );
};
