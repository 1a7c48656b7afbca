import { Link } from '@tanstack/react-router';
import { type Row, useList } from '../../api/use-list';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { useServiceWords } from '../language/words';
import { DataTable } from '../kit/data-table';
import { Loaded } from '../kit/loaded';
import { Section, State } from '../kit/page';
import { batchMessages } from './messages';
import { batchPage } from './place-of-batch';

type Batch = Row<'/api/batches'>;
type Kind = Batch['kind'];

export const BatchTable = (props: {
  readonly caption: string;
  readonly rows: readonly Batch[];
  readonly empty: string;
  readonly onMore?: (() => void) | undefined;
}) => {
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const plannedOf = ({ plannedQuantity, kind }: Batch): string =>
    formats.quantity(plannedQuantity ?? '', kind === 'cast' || kind === 'pack' ? 'pc' : 'g');
  const partOf = ({ part }: Batch): string => (part === null ? '' : t('part', { ...part }));
  return (
    <DataTable
      caption={props.caption}
      terse
      rows={props.rows}
      rowKey={({ id }) => id}
      csvName="batches"
      empty={props.empty}
      onMore={props.onMore}
      columns={[
        {
          key: 'item',
          title: t('item'),
          cell: (row) => (
            <Link to={batchPage(row.kind)} params={{ id: row.id }}>
              <strong>{row.itemName}</strong>
            </Link>
          ),
          text: (row) => row.itemName,
        },
        {
          key: 'code',
          title: t('batch'),
          cell: (row) => (
            <>
              <code>{row.code}</code> {partOf(row)}
            </>
          ),
          text: (row) => `${row.code} ${partOf(row)}`.trim(),
        },
        {
          key: 'planned',
          title: t('planned'),
          numeric: true,
          cell: (row) => (row.plannedQuantity === null ? '–' : plannedOf(row)),
          text: (row) => row.plannedQuantity ?? '',
        },
        {
          key: 'person',
          title: t('person'),
          cell: (row) => row.operatorName,
          text: (row) => row.operatorName,
        },
        {
          key: 'since',
          title: t('since'),
          tight: true,
          cell: (row) => formats.instant(row.openedAt),
          text: (row) => row.openedAt,
        },
        {
          key: 'state',
          title: t('state'),
          cell: (row) => (
            <State tone={row.state === 'finished' ? 'good' : 'plain'}>{word(row.state)}</State>
          ),
          text: (row) => row.state,
        },
      ]}
    />
  );
};

/** The batches of one kind: in hand first, then those that were finished lately. */
export const BatchRegister = ({ kind }: { readonly kind: Kind }) => {
  const t = useMessages(batchMessages);
  const open = useList('/api/batches', { kind, state: 'open' });
  const finished = useList('/api/batches', { kind, state: 'finished', limit: 20 });
  return (
    <>
      <Section title={t('open')}>
        <Loaded query={open.query}>
          {(rows) => (
            <BatchTable caption={t('open')} rows={rows} empty={t('noneOpen')} onMore={open.more} />
          )}
        </Loaded>
      </Section>
      <Section title={t('finished')}>
        <Loaded query={finished.query}>
          {(rows) => (
            <BatchTable
              caption={t('finished')}
              rows={rows}
              empty={t('noneFinished')}
              onMore={finished.more}
            />
          )}
        </Loaded>
      </Section>
    </>
  );
};
