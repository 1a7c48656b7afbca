import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useMessages } from '../../shared/language/catalogue';
import { Page, Section } from '../../shared/kit/page';
import { TraceNav } from '../../shared/rooms/trace-nav';
import { ScanField } from '../../shared/scan/scan-field';
import { useScans } from '../../shared/scan/use-scans';
import { StartFields } from '../../shared/starts/start-fields';
import { EMPTY_START, isWhole, searchOf, type StartForm } from '../../shared/starts/start-form';
import { traceMessages } from './messages';

/** Where a trace begins: a code, or a supplier, an item, a mould, a tank or a place and time. */
const Find = () => {
  const t = useMessages(traceMessages);
  const navigate = useNavigate();
  const [form, setForm] = useState<StartForm>({ ...EMPTY_START, kind: 'supplier' });
  const byText = (text: string): void =>
    void navigate({ to: '/trace/from', search: { kind: 'text', text: text.trim() } });
  useScans(byText);
  return (
    <Page title={t('title')} lead={t('lead')}>
      <TraceNav />
      <div className="section scan-large">
        <ScanField id="trace-scan" label={t('code')} onText={byText} />
      </div>
      <Section title={t('start')}>
        <form
          className="stack narrow"
          onSubmit={(event) => {
            event.preventDefault();
            void navigate({ to: '/trace/from', search: searchOf(form) });
          }}
        >
          <StartFields form={form} put={(part) => setForm((now) => ({ ...now, ...part }))} />
          <div className="row">
            <Button type="submit" disabled={!isWhole(form)}>
              {t('go')}
            </Button>
          </div>
        </form>
      </Section>
    </Page>
  );
};

export default Find;
