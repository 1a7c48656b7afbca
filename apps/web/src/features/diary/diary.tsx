import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { addDays } from '../../shared/formats/days';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DayField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section, State } from '../../shared/kit/page';
import { LongPaperLink } from '../../shared/kit/paper-link';
import { CleaningDialog, PlaceReadingDialog } from '../../shared/readings/reading-dialogs';
import { diaryMessages } from '../../shared/readings/messages';
import { RoomCheckDialog } from '../../shared/readings/room-check';
import { roomCheckMessages } from '../../shared/readings/room-messages';
import { PlaceCurve } from './place-curves';
import { ReadingsDue } from '../../shared/readings/readings-due';

type Day = components['schemas']['DiaryDayView'];

const DayEntries = ({ day }: { readonly day: Day }) => {
  const t = useMessages(diaryMessages);
  const formats = useFormats();
  return (
    <Section title={formats.weekday(day.day)}>
      <DataTable
        caption={formats.day(day.day)}
        terse
        rows={day.entries}
        rowKey={(row, at) => `${row.at}-${String(at)}`}
        csvName={`diary-${day.day}`}
        columns={[
          { key: 'time', title: t('time'), cell: (row) => row.time, text: (row) => row.time },
          { key: 'kind', title: t('kind'), cell: (row) => t(row.kind), text: (row) => row.kind },
          {
            key: 'subject',
            title: t('subject'),
            cell: (row) => row.subject,
            text: (row) => row.subject,
          },
          {
            key: 'what',
            title: t('what'),
            wide: true,
            cell: (row) => (
              <span>
                {row.attention && <State tone="warn">{t('attention')}</State>} {row.what}
              </span>
            ),
            text: (row) => row.what,
          },
          { key: 'who', title: t('who'), cell: (row) => row.userName, text: (row) => row.userName },
        ]}
      />
    </Section>
  );
};

const Diary = () => {
  const t = useMessages(diaryMessages);
  const room = useMessages(roomCheckMessages);
  const formats = useFormats();
  const may = useMay('maker', 'seller');
  const [to, setTo] = useState(formats.today());
  const [from, setFrom] = useState(addDays(formats.today(), -6));
  const [open, setOpen] = useState<{ placeId: string } | 'clean' | 'room'>();
  const close = (): void => setOpen(undefined);
  const range = from !== '' && to !== '';
  const diary = useRead(
    '/api/diary',
    { params: { query: { from, to } } },
    { keep: true, enabled: range },
  );
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        <>
          <LongPaperLink href={`/api/diary.pdf?from=${from}&to=${to}`}>{t('pdf')}</LongPaperLink>
          {may && (
            <>
              <Button variant="default" onClick={() => setOpen('room')}>
                {room('open')}
              </Button>
              <Button variant="default" onClick={() => setOpen('clean')}>
                {t('clean')}
              </Button>
              <Button onClick={() => setOpen({ placeId: '' })}>{t('take')}</Button>
            </>
          )}
        </>
      }
    >
      <Section title={t('due')}>
        <ReadingsDue nothing="–" onTake={may ? (placeId) => setOpen({ placeId }) : undefined} />
      </Section>
      <div className="columns filters section no-print">
        <DayField label={t('from')} value={from} onChange={setFrom} max={to} />
        <DayField label={t('to')} value={to} onChange={setTo} min={from} />
      </div>
      {range && <PlaceCurve from={from} to={to} />}
      <Loaded query={diary}>
        {(data) =>
          data.days.every(({ entries }) => entries.length === 0) ? (
            <p className="quiet">{t('none')}</p>
          ) : (
            <>
              {[...data.days]
                .filter(({ entries }) => entries.length > 0)
                .sort((a, b) => b.day.localeCompare(a.day))
                .map((day) => (
                  <DayEntries key={day.day} day={day} />
                ))}
            </>
          )
        }
      </Loaded>
      {open === 'clean' && <CleaningDialog onClose={close} />}
      {open === 'room' && <RoomCheckDialog onClose={close} />}
      {typeof open === 'object' && <PlaceReadingDialog placeId={open.placeId} onClose={close} />}
    </Page>
  );
};

export default Diary;
