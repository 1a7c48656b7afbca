import { useMessages } from '../../shared/language/catalogue';
import { SubNav } from '../../shared/kit/sub-nav';
import { importMessages } from './import-messages';
import { workshopMessages } from './messages';

export const WorkshopNav = () => {
  const t = useMessages(workshopMessages);
  const imports = useMessages(importMessages);
  return (
    <SubNav
      label={t('rooms')}
      pages={[
        { to: '/workshop', label: t('settings') },
        { to: '/workshop/people', label: t('people') },
        { to: '/workshop/suppliers', label: t('suppliers') },
        { to: '/workshop/customers', label: t('customers') },
        { to: '/workshop/places', label: t('places') },
        { to: '/workshop/rates', label: t('rates') },
        { to: '/workshop/import', label: imports('title') },
        { to: '/workshop/data', label: t('dataOut') },
      ]}
    />
  );
};
