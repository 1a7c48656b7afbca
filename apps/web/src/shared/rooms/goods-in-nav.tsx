import { useMessages } from '../language/catalogue';
import { SubNav } from '../kit/sub-nav';
import { roomMessages } from './messages';

export const GoodsInNav = () => {
  const t = useMessages(roomMessages);
  return (
    <SubNav
      label={t('goodsIn')}
      pages={[
        { to: '/goods-in', label: t('deliveries') },
        { to: '/goods-in/items', label: t('items') },
        { to: '/goods-in/buying', label: t('supply') },
      ]}
    />
  );
};
