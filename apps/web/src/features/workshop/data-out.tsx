import { useState } from 'react';
import { useFormats } from '../../shared/formats/use-formats';
import { addDays } from '../../shared/formats/days';
import { useMessages } from '../../shared/language/catalogue';
import { DayField } from '../../shared/kit/fields';
import { SaveButton } from '../../shared/kit/save-button';
import { Caution, Page, Section } from '../../shared/kit/page';
import { workshopMessages } from './messages';
import { WorkshopNav } from './workshop-nav';

/** What the workshop can take along: its events in the open standard, and its registers. */
const DataOut = () => {
  const t = useMessages(workshopMessages);
  const formats = useFormats();
  const [from, setFrom] = useState(addDays(formats.today(), -30));
  const [to, setTo] = useState(formats.today());
  return (
    <Page title={t('dataOut')} lead={t('exportsLead')}>
      <WorkshopNav />
      <Section title={t('events')}>
        <div className="columns columns-end">
          <DayField label={t('from')} value={from} onChange={setFrom} />
          <DayField label={t('to')} value={to} onChange={setTo} />
          <SaveButton
            label={t('events')}
            path={`/api/exports/events?from=${from}&to=${to}`}
            fileName={`events-${from}-${to}.jsonld`}
          />
        </div>
      </Section>
      <Section title={t('registers')}>
        <SaveButton label={t('registers')} path="/api/exports/lots.csv" fileName="lots.csv" />
      </Section>
      <Section title={t('backup')}>
        <p>{t('backupLead')}</p>
        <p>
          <code>npm run backup -- {t('backupFile')}</code>
        </p>
        <p>{t('backupBack')}</p>
        <p>
          <code>npm run restore -- {t('backupFile')}</code>
        </p>
        <Caution>{t('backupCaution')}</Caution>
      </Section>
    </Page>
  );
};

export default DataOut;
