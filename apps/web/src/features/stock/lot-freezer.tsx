import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { DayField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { RoomCheckHere } from '../../shared/readings/room-check-here';
import { freezerMessages } from './freezer-messages';

type Lot = components['schemas']['LotView'];
type Way = 'freeze' | 'thaw';

const FreezerDialog = (props: {
  readonly code: string;
  readonly way: Way;
  readonly onClose: () => void;
}) => {
  const { code, way } = props;
  const t = useMessages(freezerMessages);
  const formats = useFormats();
  const book = useBooking();
  const [on, setOn] = useState(() => formats.today());
  return (
    <EditDialog
      title={way === 'freeze' ? t('freezeTitle', { code }) : t('thawTitle', { code })}
      confirm={t(way)}
      onClose={props.onClose}
      onSave={() =>
        book({
          path: way === 'freeze' ? '/api/lots/{code}/freezing' : '/api/lots/{code}/thawing',
          at: { code },
          body: { on },
          label: way === 'freeze' ? t('freezeLabel', { code }) : t('thawLabel', { code }),
          lane: `lot-${code}`,
        })
      }
    >
      {(errors) => (
        <>
          <Caution>{way === 'freeze' ? t('freezeLead') : t('thawLead')}</Caution>
          <DayField
            label={t('on')}
            value={on}
            max={formats.today()}
            onChange={setOn}
            error={errors['on']}
            required
          />
          {way === 'thaw' && <RoomCheckHere />}
        </>
      )}
    </EditDialog>
  );
};

/** Into the freezer and out again; only what the workshop made has a life after thawing. */
export const LotFreezer = ({ lot }: { readonly lot: Lot }) => {
  const t = useMessages(freezerMessages);
  const may = useMay('maker');
  const [open, setOpen] = useState<Way>();
  const made = lot.batchCode !== null;
  const { code } = lot;
  const dates = useRead(
    '/api/lots/{code}/dates',
    { params: { path: { code } } },
    { enabled: made },
  ).data;
  if (!may || dates === undefined || Number(lot.onHandQuantity) <= 0) return null;
  const way: Way | undefined =
    dates.frozenOn === null ? 'freeze' : dates.thawedOn === null ? 'thaw' : undefined;
  if (way === undefined) return null;
  return (
    <>
      <Button variant="default" onClick={() => setOpen(way)}>
        {t(way)}
      </Button>
      {open !== undefined && (
        <FreezerDialog code={code} way={open} onClose={() => setOpen(undefined)} />
      )}
    </>
  );
};

/** Where a lot stands with the freezer, in words beside its date. */
export const FreezerState = (props: {
  readonly frozenOn: string | null;
  readonly thawedOn: string | null;
}) => {
  const t = useMessages(freezerMessages);
  const formats = useFormats();
  if (props.thawedOn !== null) {
    return <div>{t('thawed', { day: formats.day(props.thawedOn) })}</div>;
  }
  return props.frozenOn === null ? null : (
    <div>{t('frozen', { day: formats.day(props.frozenOn) })}</div>
  );
};
