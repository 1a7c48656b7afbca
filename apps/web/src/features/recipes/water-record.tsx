import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Fact, Facts, Page, Section } from '../../shared/kit/page';
import { LotLink } from '../../shared/lots/lot-table';
import { Calibrations } from './calibrations';
import { waterMessages } from './water-messages';

const EstimatesAgainstMeasurements = () => {
  const t = useMessages(waterMessages);
  const formats = useFormats();
  const own = useRead('/api/recipes/water-activity-record');
  const figure = (value: string): string => formats.number(value, 3, 2);
  return (
    <Section title={t('record')}>
      <Loaded query={own}>
        {({ rows, record, caution }) => (
          <>
            {record !== null && (
              <Facts>
                <Fact name={t('pairs')}>{record.pairs}</Fact>
                <Fact name={t('bias')}>
                  {figure(record.bias)} <span className="quiet">{t('biasHint')}</span>
                </Fact>
                <Fact name={t('spread')}>{figure(record.rootMeanSquare)}</Fact>
                <Fact name={t('largest')}>{figure(record.largest)}</Fact>
              </Facts>
            )}
            <DataTable
              caption={t('record')}
              rows={rows}
              rowKey={(row) => row.recipeVersionId + row.at}
              csvName="water-activity"
              empty={t('none')}
              columns={[
                {
                  key: 'product',
                  title: t('product'),
                  cell: (row) => (
                    <>
                      {row.itemName}{' '}
                      <span className="quiet">{t('version', { number: row.number })}</span>
                    </>
                  ),
                  text: (row) => row.itemName,
                },
                {
                  key: 'lot',
                  title: t('lot'),
                  cell: (row) => (row.lotCode === null ? '–' : <LotLink code={row.lotCode} />),
                  text: (row) => row.lotCode ?? '',
                },
                {
                  key: 'estimate',
                  title: t('estimate'),
                  numeric: true,
                  cell: (row) => figure(row.estimate),
                  text: (row) => row.estimate,
                },
                {
                  key: 'measured',
                  title: t('measured'),
                  numeric: true,
                  cell: (row) => figure(row.measured),
                  text: (row) => row.measured,
                },
                {
                  key: 'difference',
                  title: t('difference'),
                  numeric: true,
                  cell: (row) => figure(row.difference),
                  text: (row) => row.difference,
                },
                {
                  key: 'at',
                  title: t('at'),
                  tight: true,
                  cell: (row) => formats.instant(row.at),
                  text: (row) => row.at,
                },
              ]}
            />
            <Caution>{caution}</Caution>
          </>
        )}
      </Loaded>
    </Section>
  );
};

/** The workshop's own record of its estimates, and the meters that it rests on. */
const WaterRecord = () => {
  const t = useMessages(waterMessages);
  return (
    <Page title={t('title')} lead={t('lead')}>
      <EstimatesAgainstMeasurements />
      <Calibrations />
    </Page>
  );
};

export default WaterRecord;
