import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { type Column, DataTable } from '../../shared/kit/data-table';
import { Section, State } from '../../shared/kit/page';
import { LotLink } from '../../shared/lots/lot-table';
import { traceMessages } from './messages';

type Trace = components['schemas']['TraceView'];
type TracedLot = components['schemas']['TracedLotView'];

export const LotsOfTrace = (props: {
  readonly title: string;
  readonly lots: readonly TracedLot[];
  readonly csvName: string;
}) => {
  const t = useMessages(traceMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const gramsOf = ({ itemKind, sharedMassGrams }: TracedLot): string | null =>
    itemKind === 'packaging' ? null : sharedMassGrams;
  const weighed = props.lots.some((lot) => Number(gramsOf(lot) ?? 0) > 0);
  const share: Column<TracedLot> = {
    key: 'share',
    title: t('share'),
    numeric: true,
    cell: (lot) => {
      const grams = gramsOf(lot);
      return grams === null ? '–' : formats.mass(grams);
    },
    text: (lot) => gramsOf(lot) ?? '',
  };
  return (
    <Section title={`${props.title} (${formats.number(String(props.lots.length))})`}>
      <DataTable
        caption={props.title}
        rows={props.lots}
        rowKey={({ code }) => code}
        csvName={props.csvName}
        empty={t('nothing')}
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (lot) => lot.itemName,
            text: (lot) => lot.itemName,
          },
          {
            key: 'lot',
            title: t('lot'),
            cell: (lot) => <LotLink code={lot.code} />,
            text: (lot) => lot.code,
          },
          ...(weighed ? [share] : []),
          {
            key: 'made',
            title: t('made'),
            numeric: true,
            cell: (lot) => formats.quantity(lot.madeQuantity, lot.unit),
            text: (lot) => lot.madeQuantity,
          },
          {
            key: 'onHand',
            title: t('onHand'),
            numeric: true,
            cell: (lot) => formats.quantity(lot.onHandQuantity, lot.unit),
            text: (lot) => lot.onHandQuantity,
          },
          {
            key: 'supplier',
            title: t('supplier'),
            cell: (lot) => [lot.supplier, lot.supplierLotCode].filter(Boolean).join(' · '),
            text: (lot) => [lot.supplier, lot.supplierLotCode].filter(Boolean).join(' · '),
          },
          {
            key: 'state',
            title: t('state'),
            cell: (lot) =>
              lot.held ? (
                <State tone="caution">{word('on_hold')}</State>
              ) : lot.refused ? (
                <State tone="warn">{word('refused')}</State>
              ) : null,
            text: (lot) => (lot.held ? 'on hold' : lot.refused ? 'refused' : ''),
          },
        ]}
      />
    </Section>
  );
};

export const DispatchesOfTrace = ({ trace }: { readonly trace: Trace }) => {
  const t = useMessages(traceMessages);
  const formats = useFormats();
  return (
    <Section title={t('sent')}>
      <DataTable
        caption={t('sent')}
        rows={trace.dispatches}
        rowKey={(row, at) => `${row.dispatch}-${row.lot}-${String(at)}`}
        csvName="dispatches"
        empty={t('nothing')}
        columns={[
          {
            key: 'customer',
            title: t('customers'),
            cell: (row) => row.customer ?? t('counterNode'),
            text: (row) => row.customer ?? '',
          },
          {
            key: 'day',
            title: t('day'),
            tight: true,
            cell: (row) => formats.day(row.sentOn),
            text: (row) => row.sentOn,
          },
          {
            key: 'lot',
            title: t('lot'),
            cell: (row) => <LotLink code={row.lot} />,
            text: (row) => row.lot,
          },
          {
            key: 'quantity',
            title: t('quantity'),
            numeric: true,
            cell: (row) => formats.number(row.quantity),
            text: (row) => row.quantity,
          },
          {
            key: 'share',
            title: t('share'),
            numeric: true,
            cell: (row) => (row.sharedMassGrams === null ? '–' : formats.mass(row.sharedMassGrams)),
            text: (row) => row.sharedMassGrams ?? '',
          },
        ]}
      />
    </Section>
  );
};

export const BatchesOfTrace = ({ trace }: { readonly trace: Trace }) => {
  const t = useMessages(traceMessages);
  const word = useServiceWords();
  const formats = useFormats();
  return (
    <Section title={t('batches')}>
      <DataTable
        caption={t('batches')}
        rows={trace.batches}
        rowKey={({ code }) => code}
        csvName="batches"
        empty={t('nothing')}
        columns={[
          {
            key: 'code',
            title: t('batch'),
            cell: (row) => (
              <Link to="/found" search={{ text: row.code }}>
                <code>{row.code}</code>
              </Link>
            ),
            text: (row) => row.code,
          },
          { key: 'kind', title: t('kind'), cell: (row) => word(row.kind), text: (row) => row.kind },
          {
            key: 'at',
            title: t('day'),
            tight: true,
            cell: (row) => formats.instant(row.openedAt),
            text: (row) => row.openedAt,
          },
          {
            key: 'person',
            title: t('person'),
            cell: (row) => row.operator,
            text: (row) => row.operator ?? '',
          },
          { key: 'tank', title: t('tank'), cell: (row) => row.tank, text: (row) => row.tank ?? '' },
        ]}
      />
      {trace.heelLinks.length > 0 && <p className="quiet">{t('heel')}</p>}
    </Section>
  );
};

export const ReadingsOfTrace = ({ trace }: { readonly trace: Trace }) => {
  const t = useMessages(traceMessages);
  const word = useServiceWords();
  const formats = useFormats();
  return (
    <Section title={t('readings')}>
      <DataTable
        caption={t('readings')}
        rows={trace.failedReadings}
        rowKey={(row, at) => `${row.at}-${String(at)}`}
        csvName="failed-readings"
        empty={t('noReadings')}
        columns={[
          {
            key: 'at',
            title: t('day'),
            tight: true,
            cell: (row) => formats.instant(row.at),
            text: (row) => row.at,
          },
          {
            key: 'measure',
            title: t('measure'),
            cell: (row) => word(row.measure),
            text: (row) => row.measure,
          },
          {
            key: 'value',
            title: t('value'),
            numeric: true,
            cell: (row) => `${formats.number(row.value)} (${word(row.verdict)})`,
            text: (row) => row.value,
          },
          {
            key: 'of',
            title: t('lot'),
            cell: (row) => <code>{row.lot ?? row.batch}</code>,
            text: (row) => row.lot ?? row.batch ?? '',
          },
          {
            key: 'done',
            title: t('corrective'),
            cell: (row) => row.correctiveAction,
            text: (row) => row.correctiveAction ?? '',
          },
          {
            key: 'trace',
            title: '',
            cell: (row) => (
              <Link to="/trace/from" search={{ kind: 'reading', id: row.id }}>
                {t('traceReading')}
              </Link>
            ),
            text: () => '',
          },
        ]}
      />
    </Section>
  );
};
