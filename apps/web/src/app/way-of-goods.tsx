import { Link } from '@tanstack/react-router';
import { useFormats } from '../shared/formats/use-formats';
import { useMessages } from '../shared/language/catalogue';
import { appMessages } from './messages';
import { beside, way, type Waiting } from './navigation';

const Count = ({ count }: { readonly count: number | undefined }) => {
  const t = useMessages(appMessages);
  const formats = useFormats();
  if (count === undefined) return <span className="way-count" aria-hidden="true" />;
  return (
    <span className={`way-count ${count === 0 ? 'way-count-none' : ''}`}>
      <span aria-hidden="true">{formats.number(String(count))}</span>
      <span className="unseen"> {t('waits', { count })}</span>
    </span>
  );
};

/** The way of the goods through the building, with what waits at each place. */
export const WayOfGoods = (props: { readonly waiting: Waiting; readonly onGo: () => void }) => {
  const t = useMessages(appMessages);
  return (
    <>
      <nav aria-label={t('way')}>
        <ol className="way">
          {way.map(({ key, to }) => (
            <li key={key}>
              <Link to={to} onClick={props.onGo}>
                <span className="way-name">{t(key)}</span>
                <Count count={props.waiting[key]} />
              </Link>
            </li>
          ))}
        </ol>
      </nav>
      <nav aria-label={t('beside')}>
        <ul className="beside">
          <li>
            <Link to="/" activeOptions={{ exact: true }} onClick={props.onGo}>
              {t('today')}
            </Link>
          </li>
          {beside.map(({ key, to }) => (
            <li key={key}>
              <Link to={to} onClick={props.onGo}>
                {t(key)}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
    </>
  );
};
