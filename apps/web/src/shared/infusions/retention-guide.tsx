import { useRead } from '../../api/use-api';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { infusionPlanMessages } from './messages';

/** What solids usually keep, for whoever has not weighed their own yet. */
export const RetentionGuide = () => {
  const t = useMessages(infusionPlanMessages);
  const formats = useFormats();
  const guide = useRead('/api/infusions/retention').data;
  if (guide === undefined) return null;
  return (
    <details>
      <summary className="why-mark">{t('guide')}</summary>
      <ul>
        {guide.items.map((row) => (
          <li key={row.what}>
            {t('guideRange', {
              what: row.what,
              low: formats.number(row.low),
              high: formats.number(row.high),
            })}{' '}
            <span className="quiet">{row.source}</span>
          </li>
        ))}
      </ul>
    </details>
  );
};
