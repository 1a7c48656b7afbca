import { useMessages } from '../../shared/language/catalogue';
import { Page } from '../../shared/kit/page';
import { todayMessages } from './messages';

const Today = () => {
  const t = useMessages(todayMessages);
  return <Page title={t('title')}>…</Page>;
};

export default Today;
