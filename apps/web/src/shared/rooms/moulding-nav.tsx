import { useMessages } from '../language/catalogue';
import { SubNav } from '../kit/sub-nav';
import { roomMessages } from './messages';

export const MouldingNav = () => {
  const t = useMessages(roomMessages);
  return (
    <SubNav
      label={t('moulding')}
      pages={[
        { to: '/moulding', label: t('casting') },
        { to: '/moulding/tanks', label: t('tanks') },
        { to: '/moulding/moulds', label: t('moulds') },
      ]}
    />
  );
};
