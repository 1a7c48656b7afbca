import { Link } from '@tanstack/react-router';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
import { BatchRegister } from '../../shared/batches/batch-register';
import { LotTable } from '../../shared/lots/lot-table';
import { packingMessages } from './messages';

const Packing = () => {
  const t = useMessages(packingMessages);
  const may = useMay('maker', 'seller');
  const boxes = useList('/api/lots', { kind: 'box', state: 'on_hand' });
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        <>
          <LongPaperLink href="/api/reports/allergens.pdf" leaves>
            {t('matrix')}
          </LongPaperLink>
          {may && (
            <Link
              to="/packing/new"
              search={{ kind: 'box' }}
              className="button-link button-link-main"
            >
              {t('start')}
            </Link>
          )}
        </>
      }
    >
      <p className="text quiet">{t('split')}</p>
      <BatchRegister kind="pack" />
      <Section title={t('ready')}>
        <Loaded query={boxes.query}>
          {(rows) => <LotTable caption={t('ready')} lots={rows} csvName="boxes" />}
        </Loaded>
      </Section>
    </Page>
  );
};

export default Packing;
