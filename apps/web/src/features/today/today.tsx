import { Link } from '@tanstack/react-router';
import { lazy, Suspense, useState } from 'react';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { addDays } from '../../shared/formats/days';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section, State } from '../../shared/kit/page';
import { ReadingsDue } from '../../shared/readings/readings-due';
import { todayMessages } from './messages';
import { batchPage } from '../../shared/batches/place-of-batch';

const PlaceReadingDialog = lazy(async () => ({
  default: (await import('../../shared/readings/reading-dialogs')).PlaceReadingDialog,
}));

/** Batches that were begun and not finished. */
const InHand = () => {
  const t = useMessages(todayMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const list = useList('/api/batches', { state: 'open' });
  return (
    <Section title={t('inHand')}>
      <Loaded query={list.query}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="quiet">{t('nothingInHand')}</p>
          ) : (
            <ul className="plain-list">
              {rows.map((row) => (
                <li key={row.id} className="row line">
                  <Link to={batchPage(row.kind)} params={{ id: row.id }}>
                    <strong>{row.itemName}</strong>
                  </Link>
                  <span>{word(row.kind)}</span>
                  <span className="quiet">
                    {row.operatorName} · {formats.instant(row.openedAt)}
                  </span>
                </li>
              ))}
            </ul>
          )
        }
      </Loaded>
    </Section>
  );
};

const ToStart = () => {
  const t = useMessages(todayMessages);
  const formats = useFormats();
  const plans = useList('/api/plans', { limit: 1 });
  const today = formats.today();
  return (
    <Section title={t('toStart')}>
      <Loaded query={plans.query}>
        {([data]) => {
          if (data === undefined)
            return (
              <p className="quiet">
                {t('noPlan')} <Link to="/out/plan">{t('toPlan')}</Link>
              </p>
            );
          const started = new Set(data.started.map(({ key }) => key));
          const due = data.batches.filter((batch) => batch.day <= today && !started.has(batch.key));
          return due.length === 0 ? (
            <p className="quiet">{t('nothingToStart')}</p>
          ) : (
            <ul className="plain-list">
              {due.map((batch) => (
                <li key={batch.key} className="row line">
                  <Link to="/out/plan">
                    <strong>{batch.itemName}</strong>
                  </Link>
                  <span>
                    {formats.quantity(batch.quantity, batch.step === 'cook' ? 'g' : 'pc')}
                  </span>
                  <span className="quiet">{batch.for.join(', ')}</span>
                </li>
              ))}
            </ul>
          );
        }}
      </Loaded>
    </Section>
  );
};

const Lots = (props: {
  readonly title: string;
  readonly nothing: string;
  readonly query: Readonly<Record<string, string>>;
  readonly why: boolean;
}) => {
  const t = useMessages(todayMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const list = useList('/api/lots', props.query);
  return (
    <Section title={props.title}>
      <Loaded query={list.query}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="quiet">{props.nothing}</p>
          ) : (
            <ul className="plain-list">
              {rows.slice(0, 12).map((lot) => {
                const hold = lot.holds.find(({ releasedAt }) => releasedAt === null);
                const day = lot.useBy ?? lot.bestBefore;
                return (
                  <li key={lot.id} className="row line">
                    <Link to="/store/lots/$code" params={{ code: lot.code }}>
                      <strong>{lot.itemName}</strong> <code>{lot.code}</code>
                    </Link>
                    <span>{formats.quantity(lot.onHandQuantity, lot.unit)}</span>
                    {day !== null && day < formats.today() && (
                      <State tone="warn">{t('past')}</State>
                    )}
                    <span className="quiet">
                      {props.why && hold !== undefined
                        ? `${formats.label(word(hold.kind))} ${hold.reason}`
                        : day === null
                          ? ''
                          : formats.day(day)}
                    </span>
                  </li>
                );
              })}
            </ul>
          )
        }
      </Loaded>
    </Section>
  );
};

const OrdersDue = () => {
  const t = useMessages(todayMessages);
  const formats = useFormats();
  const list = useList('/api/orders', { state: 'open', dueBefore: addDays(formats.today(), 7) });
  return (
    <Section title={t('orders')}>
      <Loaded query={list.query}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="quiet">{t('noOrders')}</p>
          ) : (
            <ul className="plain-list">
              {rows.map((order) => (
                <li key={order.id} className="row line">
                  <Link to="/out/orders">
                    <strong>{formats.weekday(order.dueOn)}</strong> {order.customerName}
                  </Link>
                  <span className="quiet">
                    {order.lines
                      .map((line) => `${formats.number(line.quantity)} × ${line.itemName}`)
                      .join(', ')}
                  </span>
                </li>
              ))}
            </ul>
          )
        }
      </Loaded>
    </Section>
  );
};

/** What the day asks for, before anything else. */
const Today = () => {
  const t = useMessages(todayMessages);
  const formats = useFormats();
  const mayRead = useMay('maker', 'seller');
  const [place, setPlace] = useState<string>();
  const weekAhead = addDays(formats.today(), 7);
  return (
    <Page title={t('title')} lead={formats.day(formats.today())}>
      <div className="halves">
        <div>
          <InHand />
          <ToStart />
          <Section title={t('due')}>
            <ReadingsDue nothing={t('nothingDue')} onTake={mayRead ? setPlace : undefined} />
          </Section>
        </div>
        <div>
          <OrdersDue />
          <Lots title={t('held')} nothing={t('nothingHeld')} query={{ state: 'on_hold' }} why />
          <Lots
            title={t('expires')}
            nothing={t('nothingExpires')}
            query={{ 'expiring-before': weekAhead, state: 'on_hand' }}
            why={false}
          />
        </div>
      </div>
      <Suspense fallback={null}>
        {place !== undefined && (
          <PlaceReadingDialog placeId={place} onClose={() => setPlace(undefined)} />
        )}
      </Suspense>
    </Page>
  );
};

export default Today;
