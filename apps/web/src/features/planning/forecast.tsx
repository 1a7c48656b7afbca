import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { addExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DayField, OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Fact, Facts, Page } from '../../shared/kit/page';
import { ItemPicker } from '../../shared/pickers/item-picker';
import { DayBars } from '../../shared/pictures/day-bars';
import { OutNav } from '../../shared/rooms/out-nav';
import { forecastMessages } from './forecast-messages';

type View = components['schemas']['ForecastView'];

const LENGTHS = [
  ['14', 'twoWeeks'],
  ['28', 'fourWeeks'],
  ['84', 'twelveWeeks'],
] as const;

const Figures = ({ forecast }: { readonly forecast: View }) => {
  const t = useMessages(forecastMessages);
  const formats = useFormats();
  if (forecast.observedDays === 0) return <p className="quiet">{t('nothingSold')}</p>;
  if (forecast.days.length === 0) return <p className="quiet">{t('noDays')}</p>;
  const total = addExact('0', ...forecast.days.map(({ expected }) => expected));
  return (
    <>
      {forecast.thin && <Caution>{t('thin')}</Caution>}
      <Facts>
        <Fact name={t('level')}>{formats.number(forecast.level, 1)}</Fact>
        <Fact name={t('total')}>{formats.number(total, 1)}</Fact>
        <Fact name={t('observed')}>{formats.number(String(forecast.observedDays))}</Fact>
      </Facts>
      <DayBars
        title={t('picture')}
        days={forecast.days.map(({ day, expected, season }) => ({
          day,
          amount: expected,
          because: season,
        }))}
        names={{
          day: t('day'),
          amount: t('expected'),
          because: t('season'),
          ordinary: t('ordinary'),
        }}
        csvName="forecast"
      />
    </>
  );
};

/** Whether plans count the counter in at all: a forecast that nobody plans for misleads. */
const InPlans = () => {
  const t = useMessages(forecastMessages);
  const formats = useFormats();
  const days = useRead('/api/plan/settings').data?.forecastDays;
  if (days === undefined) return null;
  return (
    <p className="section text">
      {days === 0 ? t('notPlanned') : t('planned', { days: formats.number(String(days)) })}{' '}
      <Link to="/out/plan/settings">{t('rules')}</Link>
    </p>
  );
};

/** What the counter will probably sell of one item, day by day. */
const Forecast = () => {
  const t = useMessages(forecastMessages);
  const formats = useFormats();
  const [itemId, setItemId] = useState('');
  const [fromDay, setFromDay] = useState(formats.today());
  const [days, setDays] = useState('14');
  const forecast = useRead(
    '/api/items/{id}/forecast',
    { params: { path: { id: itemId }, query: { fromDay, days: Number(days) } } },
    { enabled: itemId !== '' && fromDay !== '', keep: true },
  );
  return (
    <Page title={t('title')} lead={t('lead')}>
      <OutNav />
      <InPlans />
      <div className="columns section">
        <ItemPicker
          label={t('what')}
          kinds={['box', 'piece']}
          value={itemId}
          onChange={setItemId}
        />
        <DayField label={t('from')} value={fromDay} onChange={setFromDay} />
        <OneOf
          label={t('howLong')}
          value={days}
          onChange={setDays}
          choices={LENGTHS.map(([value, name]) => ({ value, label: t(name) }))}
        />
      </div>
      {itemId === '' ? (
        <p className="quiet">{t('pickFirst')}</p>
      ) : (
        <Loaded query={forecast}>{(data) => <Figures forecast={data} />}</Loaded>
      )}
    </Page>
  );
};

export default Forecast;
