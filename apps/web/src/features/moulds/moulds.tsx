import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { type Row, useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section, State } from '../../shared/kit/page';
import { mouldMessages } from './messages';
import { DesignDialog, InspectDialog, TraysDialog } from './mould-dialogs';
import { MouldingNav } from '../../shared/rooms/moulding-nav';

type Mould = Row<'/api/moulds'>;

const Trays = ({ onInspect }: { readonly onInspect: ((mould: Mould) => void) | undefined }) => {
  const t = useMessages(mouldMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const trays = useList('/api/moulds');
  return (
    <Section title={t('trays')}>
      <Loaded query={trays.query}>
        {(rows) => (
          <DataTable
            caption={t('trays')}
            rows={rows}
            rowKey={({ id }) => id}
            csvName="moulds"
            onMore={trays.more}
            empty={t('noTrays')}
            columns={[
              {
                key: 'tag',
                title: t('tag'),
                cell: (row) => <code>{row.tag}</code>,
                text: (row) => row.tag,
              },
              {
                key: 'design',
                title: t('designs'),
                cell: (row) => row.designName,
                text: (row) => row.designName,
              },
              {
                key: 'state',
                title: t('state'),
                cell: (row) => (
                  <State tone={row.state === 'sound' ? 'good' : 'warn'}>{word(row.state)}</State>
                ),
                text: (row) => row.state,
              },
              {
                key: 'sound',
                title: t('lastSound'),
                tight: true,
                cell: (row) => (row.lastSoundAt === null ? '–' : formats.instant(row.lastSoundAt)),
                text: (row) => row.lastSoundAt ?? '',
              },
              {
                key: 'batch',
                title: t('inBatch'),
                cell: (row) => row.inBatchCode !== null && <code>{row.inBatchCode}</code>,
                text: (row) => row.inBatchCode ?? '',
              },
              {
                key: 'do',
                title: '',
                cell: (row) => (
                  <span className="row">
                    {onInspect !== undefined && (
                      <Button
                        variant="default"
                        aria-label={t('inspectTitle', { tag: row.tag })}
                        onClick={() => onInspect(row)}
                      >
                        {t('inspect')}
                      </Button>
                    )}
                    <Link to="/trace/moulds/$tag" params={{ tag: row.tag }} className="button-link">
                      {t('trace')}
                    </Link>
                  </span>
                ),
                text: () => '',
              },
            ]}
          />
        )}
      </Loaded>
    </Section>
  );
};

const Designs = () => {
  const t = useMessages(mouldMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const designs = useList('/api/mould-designs');
  return (
    <Section title={t('designs')}>
      <Loaded query={designs.query}>
        {(rows) => (
          <DataTable
            caption={t('designs')}
            rows={rows}
            rowKey={({ id }) => id}
            empty={t('noDesigns')}
            columns={[
              {
                key: 'name',
                title: t('name'),
                cell: (row) => <strong>{row.name}</strong>,
                text: (row) => row.name,
              },
              {
                key: 'shape',
                title: t('shape'),
                cell: (row) => word(row.shape),
                text: (row) => row.shape,
              },
              {
                key: 'cavities',
                title: t('cavities'),
                numeric: true,
                cell: (row) =>
                  `${String(row.rows)} × ${String(row.columns)} = ${String(row.cavities)}`,
                text: (row) => String(row.cavities),
              },
              {
                key: 'mass',
                title: t('pieceMass'),
                numeric: true,
                cell: (row) =>
                  row.pieceMassGrams === null ? '–' : formats.mass(row.pieceMassGrams),
                text: (row) => row.pieceMassGrams ?? '',
              },
              {
                key: 'sound',
                title: t('sound'),
                numeric: true,
                cell: (row) => `${String(row.soundMoulds)} / ${String(row.keptMoulds)}`,
                text: (row) => String(row.soundMoulds),
              },
            ]}
          />
        )}
      </Loaded>
    </Section>
  );
};

const Moulds = () => {
  const t = useMessages(mouldMessages);
  const may = useMay('maker');
  const [open, setOpen] = useState<'design' | 'trays' | Mould>();
  const close = (): void => setOpen(undefined);
  return (
    <Page
      title={t('moulds')}
      actions={
        may && (
          <>
            <Button variant="default" onClick={() => setOpen('design')}>
              {t('addDesign')}
            </Button>
            <Button onClick={() => setOpen('trays')}>{t('addTrays')}</Button>
          </>
        )
      }
    >
      <MouldingNav />
      <Designs />
      <Trays onInspect={may ? setOpen : undefined} />
      {open === 'design' && <DesignDialog onClose={close} />}
      {open === 'trays' && <TraysDialog onClose={close} />}
      {typeof open === 'object' && <InspectDialog mould={open} onClose={close} />}
    </Page>
  );
};

export default Moulds;
