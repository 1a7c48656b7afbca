import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useMessages } from '../../shared/language/catalogue';
import { DayField, OneOf } from '../../shared/kit/fields';
import { Page, Section } from '../../shared/kit/page';
import { ItemPicker } from '../../shared/pickers/item-picker';
import { PlacePicker, SupplierPicker } from '../../shared/pickers/party-pickers';
import { ScanField } from '../../shared/scan/scan-field';
import { useScans } from '../../shared/scan/use-scans';
import { traceMessages } from './messages';
import { TraceNav } from '../../shared/rooms/trace-nav';

type Start = 'supplier' | 'item' | 'place';

/** Where a trace begins: a code, or a supplier, an item, a place and time. */
const Find = () => {
  const t = useMessages(traceMessages);
  const navigate = useNavigate();
  const [kind, setKind] = useState<Start>('supplier');
  const [id, setId] = useState('');
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
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
            const window = kind === 'place' ? { from, to } : {};
            void navigate({ to: '/trace/from', search: { kind, id, ...window } });
          }}
        >
          <OneOf
            label={t('start')}
            value={kind}
            onChange={(next) => {
              setKind(next as Start);
              setId('');
            }}
            choices={[
              { value: 'supplier', label: t('startSupplier') },
              { value: 'item', label: t('startItem') },
              { value: 'place', label: t('startPlace') },
            ]}
          />
          {kind === 'supplier' && <SupplierPicker value={id} onChange={setId} />}
          {kind === 'item' && <ItemPicker value={id} onChange={setId} />}
          {kind === 'place' && (
            <>
              <PlacePicker value={id} onChange={setId} />
              <DayField label={t('from')} value={from} onChange={setFrom} />
              <DayField label={t('to')} value={to} onChange={setTo} />
            </>
          )}
          <div className="row">
            <Button type="submit" disabled={id === ''}>
              {t('go')}
            </Button>
          </div>
        </form>
      </Section>
    </Page>
  );
};

export default Find;
