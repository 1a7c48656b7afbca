import { useMessages } from '../../shared/language/catalogue';
import { SubNav } from '../../shared/kit/sub-nav';
import { mouldMessages } from './messages';

export const MouldingNav = () => {
  const t = useMessages(mouldMessages);
  return (
    <SubNav
      label={t('rooms')}
      pages={[
        { to: '/moulding', label: t('batches') },
        { to: '/moulding/tanks', label: t('tanks') },
        { to: '/moulding/moulds', label: t('moulds') },
      ]}
    />
  );
};
