import { useMessages } from '../../shared/language/catalogue';
import { SubNav } from '../../shared/kit/sub-nav';
import { goodsInMessages } from './messages';

export const GoodsInNav = () => {
  const t = useMessages(goodsInMessages);
  return (
    <SubNav
      label={t('rooms')}
      pages={[
        { to: '/goods-in', label: t('deliveries') },
        { to: '/goods-in/items', label: t('items') },
      ]}
    />
  );
};
