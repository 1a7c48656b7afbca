import { Button } from '@mantine/core';
import { lazy, Suspense, useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Fact, Facts, Page, State } from '../../shared/kit/page';
import { priceMessages } from './messages';
import { SetPriceDialog } from './price-dialogs';

const Waterfall = lazy(async () => ({
  default: (await import('../../shared/pictures/waterfall')).Waterfall,
}));

type Cost = components['schemas']['ItemCostView'];
type Priced = components['schemas']['PricedView'];

const CostPicture = ({ cost }: { readonly cost: Cost }) => {
  const t = useMessages(priceMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const steps = cost.waterfall.map((step) => ({
    key: step.category + step.part,
    name:
      step.part === step.category
        ? t(step.category)
        : `${formats.label(t(step.category))} ${word(step.part)}`,
    amount: step.amount,
  }));
  const last = cost.waterfall.at(-1)?.to ?? '0';
  return (
    <>
      <p className="quiet">{t('breakdown', { day: formats.day(cost.on) })}</p>
      <Suspense fallback={null}>
        <Waterfall
          title={t('waterfall')}
          csvName="cost"
          steps={[...steps, { key: 'total', name: t('total'), amount: last, total: true }]}
        />
      </Suspense>
      <details>
        <summary>{t('sources')}</summary>
        <DataTable
          caption={t('sources')}
          rows={cost.sources}
          rowKey={(row, at) => `${row.category}-${row.part}-${row.source}-${String(at)}`}
          csvName="cost-sources"
          columns={[
            {
              key: 'category',
              title: t('category'),
              cell: (row) => t(row.category),
              text: (row) => row.category,
            },
            {
              key: 'part',
              title: t('part'),
              cell: (row) => word(row.part),
              text: (row) => row.part,
            },
            {
              key: 'source',
              title: t('source'),
              cell: (row) => (row.category === 'overhead' ? word(row.source) : row.source),
              text: (row) => row.source,
            },
            {
              key: 'amount',
              title: t('amount'),
              numeric: true,
              cell: (row) => formats.money(row.amount, 4),
              text: (row) => row.amount,
            },
          ]}
        />
      </details>
    </>
  );
};

const PriceFacts = ({ title, priced }: { readonly title: string; readonly priced: Priced }) => {
  const t = useMessages(priceMessages);
  const formats = useFormats();
  return (
    <div className="sheet">
      <h3>{title}</h3>
      <p className="figure-large">{formats.money(priced.gross)}</p>
      <Facts>
        <Fact name={t('net')}>{formats.money(priced.net)}</Fact>
        <Fact name={`${t('vat')} ${formats.percent(priced.vatPercent)}`}>
          {formats.money(priced.vat)}
        </Fact>
        <Fact name={t('margin')}>
          {priced.marginPercent === null ? '–' : formats.percent(priced.marginPercent)}
        </Fact>
        <Fact name={t('markUp')}>
          {priced.markUpPercent === null ? '–' : formats.percent(priced.markUpPercent)}
        </Fact>
        <Fact name={t('perKg')}>
          {priced.pricePerKg === null ? '–' : formats.money(priced.pricePerKg)}
        </Fact>
      </Facts>
      {priced.warning !== null && <State tone="warn">{priced.warning}</State>}
    </div>
  );
};

const PricePage = () => {
  const id = useParam('id');
  const t = useMessages(priceMessages);
  const formats = useFormats();
  const mayPrice = useMay();
  const [list, setList] = useState<'counter' | 'trade'>('counter');
  const [open, setOpen] = useState(false);
  const item = useRead('/api/items/{id}', { params: { path: { id } } });
  const price = useRead(
    '/api/items/{id}/price',
    { params: { path: { id }, query: { list } } },
    { keep: true },
  );
  return (
    <Page
      title={item.data?.name ?? t('price')}
      actions={
        mayPrice &&
        price.data !== undefined && <Button onClick={() => setOpen(true)}>{t('set')}</Button>
      }
    >
      <div className="section no-print">
        <OneOf
          label={t('list')}
          value={list}
          onChange={(next) => setList(next as 'counter' | 'trade')}
          choices={[
            { value: 'counter', label: t('counter') },
            { value: 'trade', label: t('trade') },
          ]}
        />
      </div>
      <Loaded query={price}>
        {(data) => (
          <>
            <div className="columns section">
              <div className="sheet">
                <h3>{t('cost')}</h3>
                <p className="figure-large">{formats.cost(data.cost.cost)}</p>
                <p className="quiet">{data.cost.per === 'kg' ? t('kg') : t('each')}</p>
              </div>
              {data.current !== null && (
                <PriceFacts
                  title={`${t('holds')} (${formats.day(data.current.fromDay)})`}
                  priced={data.current}
                />
              )}
              <PriceFacts title={t('proposed')} priced={data.proposed} />
            </div>
            <CostPicture cost={data.cost} />
            {open && (
              <SetPriceDialog itemId={id} list={list} price={data} onClose={() => setOpen(false)} />
            )}
          </>
        )}
      </Loaded>
    </Page>
  );
};

export default PricePage;
