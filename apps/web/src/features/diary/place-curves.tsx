import { lazy, Suspense, useState } from 'react';
import { useList } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { diaryMessages } from '../../shared/readings/messages';

const ReadingsLine = lazy(async () => ({
  default: (await import('../../shared/pictures/readings-line')).ReadingsLine,
}));

/** The temperatures of one place as a line between its limits. */
export const PlaceCurve = (props: { readonly from: string; readonly to: string }) => {
  const t = useMessages(diaryMessages);
  const word = useServiceWords();
  const places = useList('/api/places').rows;
  const [chosen, setChosen] = useState('');
  const first = places.find(({ kind }) => kind === 'fridge') ?? places[0];
  const place = places.find(({ id }) => id === chosen) ?? first;
  const readings = useList(
    '/api/readings',
    {
      placeId: place?.id,
      measure: 'temp_c',
      from: `${props.from}T00:00:00Z`,
      to: `${props.to}T23:59:59Z`,
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
            </Suspense>
          )
        }
      </Loaded>
    </>
  );
};
