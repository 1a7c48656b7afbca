import { useState } from 'react';
import { Link } from '@tanstack/react-router';
import { type Row, useList } from '../../api/use-list';
import { useSearchText } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { ChoiceField, DayField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { ItemPicker } from '../../shared/pickers/item-picker';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { LotTable } from '../../shared/lots/lot-table';
import { stockMessages } from '../../shared/lots/messages';

const STATES = ['on_hand', 'on_hold', 'expired', 'empty', 'refused'] as const;
const KINDS = ['ingredient', 'packaging', 'filling', 'piece', 'box'] as const;

const NO_DATE = '9999-12-31';
const dateOf = (lot: Row<'/api/lots'>): string => lot.useBy ?? lot.bestBefore ?? NO_DATE;
const byDate = (a: Row<'/api/lots'>, b: Row<'/api/lots'>): number =>
  dateOf(a).localeCompare(dateOf(b));

const Store = () => {
  const t = useMessages(stockMessages);
  const word = useServiceWords();
  const [filter, setFilter] = useState({
    state: useSearchText('state') ?? 'on_hand',
    kind: useSearchText('kind') ?? '',
    item: useSearchText('item') ?? '',
    place: '',
    'expiring-before': '',
  });
  const list = useList('/api/lots', { ...filter, limit: 500 });
  const put = (change: Partial<typeof filter>): void => setFilter((now) => ({ ...now, ...change }));
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        <Link to="/store/count" className="button-link">
          {t('count')}
        </Link>
      }
    >
      <div className="columns filters section no-print">
        <ChoiceField
          label={t('state')}
          value={filter.state}
          empty={t('any')}
          onChange={(state) => put({ state })}
          choices={STATES.map((state) => ({ value: state, label: word(state) }))}
        />
        <ChoiceField
          label={t('kind')}
          value={filter.kind}
          empty={t('any')}
          onChange={(kind) => put({ kind })}
          choices={KINDS.map((kind) => ({ value: kind, label: word(kind) }))}
        />
        <ItemPicker label={t('item')} value={filter.item} onChange={(item) => put({ item })} />
        <PlacePicker empty={t('any')} value={filter.place} onChange={(place) => put({ place })} />
        <DayField
          label={t('expiresBefore')}
          value={filter['expiring-before']}
          onChange={(day) => put({ 'expiring-before': day })}
        />
      </div>
      <Loaded query={list.query}>
        {(rows) => (
          <LotTable
            caption={t('lots')}
            lots={[...rows].sort(byDate)}
            csvName="lots"
            onMore={list.more}
          />
        )}
      </Loaded>
    </Page>
  );
};

export default Store;
