import { Button } from '@mantine/core';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Section, State } from '../../shared/kit/page';
import { LotLink } from '../../shared/lots/lot-table';
import { recallMessages } from './messages';
import type { Recall } from './use-recall-step';

type Lot = components['schemas']['ScopeLotView'];
type Customer = components['schemas']['ScopeCustomerView'];

export const ScopeLots = (props: {
  readonly recall: Recall;
  readonly onTakeOut: ((lot: Lot) => void) | undefined;
  readonly out: ReadonlyMap<string, string>;
}) => {
  const { recall, onTakeOut, out } = props;
  const t = useMessages(recallMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const { lots } = recall.scope;
  const held = new Set(recall.here.filter((row) => row.held).map(({ lot }) => lot));
  return (
    <Section title={`${t('lots')} (${formats.number(String(lots.length))})`}>
      <DataTable
        caption={t('lots')}
        rows={lots}
        rowKey={({ code }) => code}
        csvName={`recall-${recall.code}-lots`}
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (lot) => lot.itemName,
            text: (lot) => lot.itemName,
          },
          {
            key: 'code',
            title: t('lot'),
            cell: (lot) => <LotLink code={lot.code} />,
            text: (lot) => lot.code,
          },
          {
            key: 'sent',
            title: t('sentQuantity'),
            numeric: true,
            cell: (lot) => formats.quantity(lot.dispatchedQuantity, lot.unit),
            text: (lot) => lot.dispatchedQuantity,
          },
          {
            key: 'counter',
            title: t('counterQuantity'),
            numeric: true,
            cell: (lot) => formats.quantity(lot.counterQuantity, lot.unit),
            text: (lot) => lot.counterQuantity,
          },
          {
            key: 'share',
            title: t('share'),
            numeric: true,
            cell: (lot) =>
              lot.sharedRatio === null
                ? '–'
                : formats.percent((Number(lot.sharedRatio) * 100).toFixed(2)),
            text: (lot) => lot.sharedRatio ?? '',
          },
          {
            key: 'state',
            title: t('state'),
            cell: (lot) => (
              <span className="row">
                {held.has(lot.code) && <State tone="caution">{word('on_hold')}</State>}
                {out.has(lot.code) && <State>{out.get(lot.code)}</State>}
                {onTakeOut !== undefined && !lot.root && !out.has(lot.code) && (
                  <Button variant="default" onClick={() => onTakeOut(lot)}>
                    {t('takeOut')}
                  </Button>
                )}
              </span>
            ),
            text: (lot) => (held.has(lot.code) ? 'on hold' : ''),
          },
        ]}
      />
    </Section>
  );
};

const contactOf = (customer: Customer): string =>
  [customer.phone, customer.email, ...customer.addressLines].filter(Boolean).join(' · ');

export const ScopeCustomers = (props: {
  readonly recall: Recall;
  readonly onTold: ((customer: Customer) => void) | undefined;
}) => {
  const { recall, onTold } = props;
  const t = useMessages(recallMessages);
  const formats = useFormats();
  return (
    <Section title={`${t('customers')} (${formats.number(String(recall.customers.length))})`}>
      <DataTable
        caption={t('customers')}
        rows={recall.customers}
        rowKey={({ id }) => id}
        csvName={`recall-${recall.code}-customers`}
        columns={[
          {
            key: 'name',
            title: t('customers'),
            cell: (row) => (
              <>
                <strong>{row.name}</strong>{' '}
                {row.learnedLater && <State tone="caution">{t('learnedLater')}</State>}
              </>
            ),
            text: (row) => row.name,
          },
          { key: 'contact', title: t('contact'), cell: contactOf, text: contactOf },
          {
            key: 'boxes',
            title: t('boxes'),
            numeric: true,
            cell: (row) => formats.number(row.boxes, 0),
            text: (row) => row.boxes,
          },
          {
            key: 'pieces',
            title: t('pieces'),
            numeric: true,
            cell: (row) => formats.number(row.pieces, 0),
            text: (row) => row.pieces,
          },
          {
            key: 'got',
            title: t('got'),
            numeric: true,
            cell: (row) => formats.mass(row.distributedGrams),
            text: (row) => row.distributedGrams,
          },
          {
            key: 'back',
            title: t('back'),
            numeric: true,
            cell: (row) => formats.mass(row.recoveredGrams),
            text: (row) => row.recoveredGrams,
          },
          {
            key: 'told',
            title: t('state'),
            cell: (row) =>
              row.told ? (
                <State tone="good">{t('told')}</State>
              ) : (
                <span className="row">
                  <State tone="warn">{t('notTold')}</State>
                  {onTold !== undefined && (
                    <Button
                      variant="default"
                      aria-label={t('toldLabel', { name: row.name })}
                      onClick={() => onTold(row)}
                    >
                      {t('markTold')}
                    </Button>
                  )}
                </span>
              ),
            text: (row) => (row.told ? 'told' : ''),
          },
        ]}
      />
    </Section>
  );
};

export const ScopeSales = ({ recall }: { readonly recall: Recall }) => {
  const t = useMessages(recallMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const names = new Map(recall.customers.map(({ id, name }) => [id, name]));
  const nameOf = (id: string | null): string =>
    id === null ? t('counter') : (names.get(id) ?? '');
  return (
    <>
      <Section title={t('sales')}>
        <DataTable
          caption={t('sales')}
          rows={[...recall.scope.sales, ...recall.learned.sales]}
          rowKey={(row, at) => `${row.dispatch}-${row.lot}-${String(at)}`}
          csvName={`recall-${recall.code}-sales`}
          columns={[
            {
              key: 'who',
              title: t('customers'),
              cell: (row) => nameOf(row.customerId),
              text: (row) => nameOf(row.customerId),
            },
            {
              key: 'day',
              title: t('day'),
              tight: true,
              cell: (row) => formats.day(row.sentOn),
              text: (row) => row.sentOn,
            },
            {
              key: 'item',
              title: t('item'),
              cell: (row) => row.itemName,
              text: (row) => row.itemName,
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
              cell: (row) => formats.quantity(row.quantity, row.unit),
              text: (row) => row.quantity,
            },
          ]}
        />
      </Section>
      {recall.scope.ends.length > 0 && (
        <Section title={t('ends')}>
          <ul className="plain-list">
            {recall.scope.ends.map((end, at) => (
              <li key={`${end.lot}-${String(at)}`} className="row line">
                <LotLink code={end.lot} /> {word(end.what)}{' '}
                {formats.quantity(end.quantity, end.unit)}
              </li>
            ))}
          </ul>
        </Section>
      )}
    </>
  );
};
