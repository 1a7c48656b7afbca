import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { useMessages } from '../language/catalogue';
import { useServiceWords } from '../language/words';
import { DecimalField } from '../kit/decimal-field';
import { EditDialog } from '../kit/edit-dialog';
import { OneOf, TextField, TickField } from '../kit/fields';
import { PlacePicker } from '../pickers/party-pickers';
import { unitOfMeasure } from '../formats/measures';
import { diaryMessages } from './messages';

type Measure = components['schemas']['TakeReadingDto']['measure'];

/** A reading of a place; the service judges it by the place's own limits. */
export const PlaceReadingDialog = (props: {
  readonly placeId: string;
  readonly onClose: () => void;
}) => {
  const t = useMessages(diaryMessages);
  const word = useServiceWords();
  const book = useBooking();
  const places = useList('/api/places').rows;
  const [placeId, setPlaceId] = useState(props.placeId);
  const [measure, setMeasure] = useState<Measure>('temp_c');
  const [value, setValue] = useState('');
  const [corrective, setCorrective] = useState('');
  const [holdLots, setHoldLots] = useState(false);
  const place = places.find(({ id }) => id === placeId);
  const limits = [place?.minTempC, place?.maxTempC]
    .filter((one) => one !== null && one !== undefined)
    .join('–');
  return (
    <EditDialog
      title={t('take')}
      onClose={props.onClose}
      onSave={() =>
        book({
          path: '/api/readings',
          body: {
            measure,
            value,
            placeId,
            ...(corrective === '' ? {} : { correctiveAction: corrective }),
            ...(holdLots ? { holdLots } : {}),
          },
          label: t('readingLabel', {
            value: `${value} ${unitOfMeasure(measure)}`,
            place: place?.name ?? '',
          }),
          lane: `place-${placeId}`,
        })
      }
    >
      {(errors) => (
        <>
          <PlacePicker value={placeId} onChange={setPlaceId} error={errors['placeId']} required />
          <OneOf
            label={t('measure')}
            value={measure}
            onChange={(next) => setMeasure(next as Measure)}
            choices={(['temp_c', 'humidity_percent'] as const).map((one) => ({
              value: one,
              label: word(one),
            }))}
          />
          <DecimalField
            label={word(measure)}
            unit={unitOfMeasure(measure)}
            hint={measure === 'temp_c' && limits !== '' ? `${limits} °C` : undefined}
            value={value}
            onChange={setValue}
            error={errors['value']}
            required
          />
          <TextField
            label={t('corrective')}
            value={corrective}
            onChange={setCorrective}
            error={errors['correctiveAction']}
          />
          <TickField label={t('holdLots')} checked={holdLots} onChange={setHoldLots} />
        </>
      )}
    </EditDialog>
  );
};

export const CleaningDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(diaryMessages);
  const book = useBooking();
  const [what, setWhat] = useState('');
  const [placeId, setPlaceId] = useState('');
  const [note, setNote] = useState('');
  return (
    <EditDialog
      title={t('clean')}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/cleanings',
          body: { what, ...(placeId === '' ? {} : { placeId }), ...(note === '' ? {} : { note }) },
          label: t('cleaningLabel', { what }),
          lane: 'cleaning',
        })
      }
    >
      {(errors) => (
        <>
          <TextField
            label={t('whatCleaned')}
            value={what}
            onChange={setWhat}
            error={errors['what']}
            required
          />
          <PlacePicker value={placeId} onChange={setPlaceId} />
          <TextField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
        </>
      )}
    </EditDialog>
  );
};
