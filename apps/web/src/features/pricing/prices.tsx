import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMessages } from '../../shared/language/catalogue';
import { OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
import { priceMessages } from './messages';
import { PriceList } from './price-list';
import { WhatIf } from './what-if';

const Prices = () => {
  const t = useMessages(priceMessages);
  const [list, setList] = useState<'counter' | 'trade'>('counter');
  const prices = useRead('/api/prices', { params: { query: { list } } }, { keep: true });
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        <LongPaperLink href={`/api/prices/list.pdf?list=${list}`} leaves>
          {t('pdf')}
        </LongPaperLink>
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
      <Section title={t('list')}>
        <Loaded query={prices}>{(data) => <PriceList rows={data.rows} />}</Loaded>
      </Section>
      <WhatIf list={list} />
    </Page>
  );
};

export default Prices;
