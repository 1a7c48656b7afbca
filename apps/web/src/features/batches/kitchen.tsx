import { Link } from '@tanstack/react-router';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { Page } from '../../shared/kit/page';
import { BatchRegister } from '../../shared/batches/batch-register';
import { batchMessages } from '../../shared/batches/messages';

const Kitchen = () => {
  const t = useMessages(batchMessages);
  const may = useMay('maker');
  return (
    <Page
      title={t('kitchen')}
      lead={t('kitchenLead')}
      actions={
        may && (
          <Link
            to="/kitchen/new"
            search={{ kind: 'filling' }}
            className="button-link button-link-main"
          >
            {t('startCook')}
          </Link>
        )
      }
    >
      <BatchRegister kind="cook" />
    </Page>
  );
};

export default Kitchen;
