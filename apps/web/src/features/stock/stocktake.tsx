import { Button } from '@mantine/core';
import { useState } from 'react';
import { useList } from '../../api/use-list';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { TextField } from '../../shared/kit/fields';
import { kitMessages } from '../../shared/kit/messages';
import { Loaded } from '../../shared/kit/loaded';
import { MoreButton } from '../../shared/kit/more-button';
import { Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { ScanField } from '../../shared/scan/scan-field';
import { useScans } from '../../shared/scan/use-scans';
import { findLot } from '../../shared/lots/find-lot';
import { stockMessages } from '../../shared/lots/messages';
import { Differences } from './count-differences';
import { type CountedLot, type Lot, useCount } from './use-count';

const CountRow = (props: {
  readonly lot: Lot | CountedLot;
  readonly counted: string;
  readonly onCount: (counted: string) => void;
}) => {
  const { lot, counted, onCount } = props;
  const t = useMessages(stockMessages);
  const formats = useFormats();
  return (
    <li className="count-line line">
      <span>
        <strong>{lot.itemName}</strong> <code>{lot.code}</code>{' '}
        <span className="quiet">
          {lot.placeName !== null && `${lot.placeName} · `}
          {t('bookedOnHand')} {formats.quantity(lot.onHandQuantity, lot.unit)}
        </span>
      </span>
      <DecimalField
        label={t('countedOf', { code: lot.code })}
        unit={lot.unit}
        weigh={lot.unit === 'g'}
        value={counted}
        onChange={onCount}
      />
    </li>
  );
};

/** In the order in which one walks: place by place, and there by name. */
const byPlace = (rows: readonly Lot[]): readonly Lot[] =>
  [...rows].sort(
    (a, b) =>
      (a.placeName ?? '').localeCompare(b.placeName ?? '') ||
      a.itemName.localeCompare(b.itemName) ||
      a.code.localeCompare(b.code),
  );

/** Counting what is really there, by scan or down the list of a place; booked in one step. */
const Stocktake = () => {
  const t = useMessages(stockMessages);
  const kit = useMessages(kitMessages);
  const [place, setPlace] = useState('');
  const [error, setError] = useState<unknown>();
  const count = useCount();
  const list = useList('/api/lots', { state: 'on_hand', place });
  const take = (text: string): void => {
    setError(undefined);
    findLot(text).then(
      (lot) => count.write(lot, count.lots.find(({ code }) => code === lot.code)?.counted ?? ''),
      setError,
    );
  };
  useScans(take);
  const written = new Map(count.lots.map((lot) => [lot.code, lot]));
  // Lots keep their place in the list while their count is typed.
  const scannedOnly = (rows: readonly Lot[]) =>
    count.lots.filter(({ code }) => !rows.some((row) => row.code === code));
  return (
    <Page title={t('countTitle')} lead={t('countLead')}>
      <div className="columns columns-end section">
        <PlacePicker value={place} onChange={setPlace} empty={t('any')} />
        <ScanField id="count-scan" label={t('lot')} onText={take} />
      </div>
      <ProblemNotice error={error} />
      {count.taken === 'waits' && (
        <p className="caution" role="status">
          {kit('waits')}
        </p>
      )}
      {count.taken !== undefined && count.taken !== 'waits' && <Differences taken={count.taken} />}
      <Loaded query={list.query}>
        {(rows) => (
          <ul className="plain-list">
            {[...scannedOnly(rows), ...byPlace(rows)].map((lot) => (
              <CountRow
                key={lot.code}
                lot={lot}
                counted={written.get(lot.code)?.counted ?? ''}
                onCount={(counted) => count.write(lot, counted)}
              />
            ))}
          </ul>
        )}
      </Loaded>
      <MoreButton onMore={list.more} />
      <div className="narrow stack section">
        <TextField label={t('countNote')} value={count.note} onChange={count.changeNote} />
        <ProblemNotice error={count.error} />
        <div className="row">
          <Button
            size="lg"
            loading={count.working}
            disabled={count.counted === 0}
            onClick={() => void count.bookIt()}
          >
            {t('countBook', { count: count.counted })}
          </Button>
          {count.lots.length > 0 && (
            <Button variant="default" onClick={count.giveUp}>
              {t('countGiveUp')}
            </Button>
          )}
        </div>
      </div>
    </Page>
  );
};

export default Stocktake;
