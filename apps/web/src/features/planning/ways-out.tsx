import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { planMessages } from './messages';

type WayOut = components['schemas']['WayOutView'];

/** What would mend a plan that leaves something short, the cheapest first. */
export const WaysOut = () => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  const ways = useRead('/api/plan/ways-out');
  const inWords = ({ kind, subject, amount }: WayOut): string => {
    const day = kind === 'open_closed_day' && subject !== null ? formats.weekday(subject) : subject;
    return t(kind, { subject: day ?? '', count: amount ?? 0 });
  };
  return (
    <Section title={t('waysOut')}>
      <p className="quiet">{t('waysOutLead')}</p>
      <Loaded query={ways}>
        {(rows) => (
          <DataTable
            caption={t('waysOut')}
            rows={rows}
            rowKey={(row) => `${row.kind} ${row.subject ?? ''}`}
            csvName="ways-out"
            columns={[
              { key: 'way', title: t('way'), cell: inWords, text: inWords },
              {
                key: 'cost',
                title: t('wayCost'),
                numeric: true,
                cell: (row) => formats.money(row.cost),
                text: (row) => row.cost,
              },
              {
                key: 'missing',
                title: t('stillMissing'),
                numeric: true,
                cell: (row) => formats.number(row.stillMissing),
                text: (row) => row.stillMissing,
              },
            ]}
          />
        )}
      </Loaded>
    </Section>
  );
};
