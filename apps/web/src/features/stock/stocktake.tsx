import { useState } from 'react';
import { Button } from '@mantine/core';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useList } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { ScanField } from '../../shared/scan/scan-field';
import { useScans } from '../../shared/scan/use-scans';
import { useFormats } from '../../shared/formats/use-formats';
import { AdjustDialog } from './lot-dialogs';
import { stockMessages } from '../../shared/lots/messages';

type Lot = components['schemas']['LotView'];

/** Counting what is really there, lot by lot, by scan or from the list of a place. */
const Stocktake = () => {
  const t = useMessages(stockMessages);
  const formats = useFormats();
  const [place, setPlace] = useState('');
  const [open, setOpen] = useState<Lot>();
  const [error, setError] = useState<unknown>();
  const list = useList('/api/lots', { state: 'on_hand', place });
  const take = (text: string): void => {
    setError(undefined);
    must(api.GET('/api/lots/{code}', { params: { path: { code: text } } })).then(setOpen, setError);
  };
  useScans(take, open === undefined);
  return (
    <Page title={t('countTitle')} lead={t('countLead')}>
      <div className="columns columns-end section">
        <PlacePicker value={place} onChange={setPlace} empty={t('any')} />
        <ScanField id="count-scan" label={t('lot')} onText={take} />
      </div>
      <ProblemNotice error={error} />
      <Loaded query={list.query}>
        {(rows) => (
          <ul className="plain-list">
            {rows.map((lot) => (
              <li key={lot.id} className="row line">
                <strong>{lot.itemName}</strong> <code>{lot.code}</code>
                <span>{formats.quantity(lot.onHandQuantity, lot.unit)}</span>
                <span className="quiet">{lot.placeName}</span>
                <Button variant="default" onClick={() => setOpen(lot)}>
                  {t('adjust')}
                </Button>
              </li>
            ))}
          </ul>
        )}
      </Loaded>
      {open !== undefined && <AdjustDialog lot={open} onClose={() => setOpen(undefined)} />}
    </Page>
  );
};

export default Stocktake;
