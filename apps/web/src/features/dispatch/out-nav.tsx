import { useMessages } from '../../shared/language/catalogue';
import { SubNav } from '../../shared/kit/sub-nav';
import { dispatchMessages } from './messages';

export const OutNav = () => {
  const t = useMessages(dispatchMessages);
  return (
    <SubNav
      label={t('rooms')}
      pages={[
        { to: '/out', label: t('sent') },
        { to: '/out/orders', label: t('orders') },
        { to: '/out/plan', label: t('plan') },
      ]}
    />
  );
};
