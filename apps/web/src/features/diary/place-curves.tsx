import { lazy, Suspense, useState } from 'react';
import { type Row, useList } from '../../api/use-list';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { State } from '../../shared/kit/page';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { diaryMessages } from '../../shared/readings/messages';
import { TraceLink } from '../../shared/starts/trace-link';

const ReadingsLine = lazy(async () => ({
  default: (await import('../../shared/pictures/readings-line')).ReadingsLine,
}));

/** What a warm fridge puts in doubt is one step away from the reading that found it warm. */
const FailedReadings = ({ rows }: { readonly rows: readonly Row<'/api/readings'>[] }) => {
  const word = useServiceWords();
  const formats = useFormats();
  const failed = rows.filter(({ verdict }) => verdict === 'low' || verdict === 'high');
  if (failed.length === 0) return null;
  return (
    <ul className="plain-list section">
      {failed.map((row) => (
        <li key={row.id} className="row line">
          <State tone="warn">
            {formats.number(row.value)} °C · {word(row.verdict)}
          </State>
          <span>{formats.instant(row.at)}</span>
          <span className="quiet">{row.correctiveAction}</span>
          <TraceLink kind="reading" id={row.id} />
        </li>
      ))}
    </ul>
  );
};

/** The temperatures of one place as a line between its limits. */
export const PlaceCurve = (props: { readonly from: string; readonly to: string }) => {
  const t = useMessages(diaryMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const places = useList('/api/places').rows;
  const [chosen, setChosen] = useState('');
  const first = places.find(({ kind }) => kind === 'fridge') ?? places[0];
  const place = places.find(({ id }) => id === chosen) ?? first;
  const readings = useList(
    '/api/readings',
    {
      placeId: place?.id,
      measure: 'temp_c',
      from: formats.dayBegins(props.from),
      to: formats.dayEnds(props.to),
      limit: 300,
    },
    place !== undefined,
  );
  if (place === undefined) return null;
  return (
    <>
      <div className="narrow section no-print">
        <PlacePicker value={place.id} onChange={setChosen} />
      </div>
      <Loaded query={readings.query}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="quiet">{t('noReadings')}</p>
          ) : (
            <Suspense fallback={null}>
              <ReadingsLine
                title={t('curve', { place: place.name })}
                unit="°C"
                low={place.minTempC}
                high={place.maxTempC}
                points={[...rows]
                  .sort((a, b) => a.at.localeCompare(b.at))
                  .map((row) => ({
                    key: row.id,
                    at: row.at,
                    value: row.value,
                    verdict: word(row.verdict),
                  }))}
              />
              <FailedReadings rows={rows} />
            </Suspense>
          )
        }
      </Loaded>
    </>
  );
};
