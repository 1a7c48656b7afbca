import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useParam } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { Fact, Facts, Page } from '../../shared/kit/page';
import { LotActions } from './lot-actions';
import { LotDate } from './lot-date';
import { LotHolds } from './lot-holds';
import { LotMovements } from './lot-movements';
import { LotState } from '../../shared/lots/lot-state';
import { stockMessages } from '../../shared/lots/messages';

type Lot = components['schemas']['LotView'];

const LotFacts = ({ lot }: { readonly lot: Lot }) => {
  const t = useMessages(stockMessages);
  const formats = useFormats();
  return (
    <Facts>
      <Fact name={t('onHand')}>
        <span className="figure-large">{formats.quantity(lot.onHandQuantity, lot.unit)}</span>
      </Fact>
      <Fact name={t('date')}>
        <LotDate lot={lot} />
      </Fact>
      <Fact name={t('madeQuantity')}>{formats.quantity(lot.madeQuantity, lot.unit)}</Fact>
      <Fact name={t('madeOn')}>{formats.day(lot.madeOn)}</Fact>
      {lot.supplierName !== null && (
        <Fact name={t('origin')}>
          {lot.supplierName}, {t('supplierLot')} <code>{lot.supplierLotCode}</code>
        </Fact>
      )}
      {lot.batchCode !== null && (
        <Fact name={t('batch')}>
          <Link to="/found" search={{ text: lot.batchCode }}>
            <code>{lot.batchCode}</code>
          </Link>
        </Fact>
      )}
      <Fact name={t('place')}>{lot.placeName ?? '–'}</Fact>
      <Fact name={t('value')}>{formats.money(lot.onHandCost)}</Fact>
    </Facts>
  );
};

const LotPage = () => {
  const code = useParam('code');
  const word = useServiceWords();
  const lot = useRead('/api/lots/{code}', { params: { path: { code } } });
  return (
    <Loaded query={lot}>
      {(data) => (
        <Page
          title={data.itemName}
          lead={
            <span className="row">
              {word(data.itemKind)} · {word('lot')} <code>{data.code}</code> <LotState lot={data} />
            </span>
          }
        >
          <LotActions lot={data} />
          <LotFacts lot={data} />
          <LotHolds lot={data} />
          <LotMovements code={data.code} unit={data.unit} />
        </Page>
      )}
    </Loaded>
  );
};

export default LotPage;
