import { Link } from '@tanstack/react-router';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { Page } from '../../shared/kit/page';
import { BatchRegister } from '../../shared/batches/batch-register';
import { mouldMessages } from './messages';
import { MouldingNav } from '../../shared/rooms/moulding-nav';

const Moulding = () => {
  const t = useMessages(mouldMessages);
  const may = useMay('maker');
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        may && (
          <Link
            to="/moulding/new"
            search={{ kind: 'piece' }}
            className="button-link button-link-main"
          >
            {t('start')}
          </Link>
        )
      }
    >
      <MouldingNav />
      <BatchRegister kind="cast" />
    </Page>
  );
};

export default Moulding;
