import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Section, State } from '../../shared/kit/page';
import { LotLink } from '../../shared/lots/lot-table';
import { recallMessages } from './messages';
import type { Recall } from './use-recall-step';

const SAID = {
  'now-in-scope': 'now-in-scope',
  'no-longer-in-scope': 'no-longer-in-scope',
  quantity: 'quantityChanged',
} as const;

/** What the record has shown since the scope was frozen: never added to it silently. */
export const Changes = ({ recall }: { readonly recall: Recall }) => {
  const t = useMessages(recallMessages);
  const formats = useFormats();
  if (recall.changes.length === 0) return null;
  return (
    <Section title={t('changes')}>
      <ul className="plain-list">
        {recall.changes.map((change, at) => (
          <li key={`${change.lot}-${String(at)}`} className="row line">
            <State tone="caution">{t(SAID[change.change])}</State> <LotLink code={change.lot} />{' '}
            {change.fields
              .map(
                ({ field, was, is }) =>
                  `${t(`field_${field}`)} ${formats.number(was)} → ${formats.number(is)}`,
              )
              .join(', ')}
          </li>
        ))}
      </ul>
    </Section>
  );
};

/** What of the case is in the house at this moment, where, and whether it is held. */
export const StillHere = ({ recall }: { readonly recall: Recall }) => {
  const t = useMessages(recallMessages);
  const formats = useFormats();
  const isReal = recall.mode === 'real';
  return (
    <Section title={t('here')}>
      <DataTable
        caption={t('here')}
        terse
        rows={recall.here}
        rowKey={({ lot }) => lot}
        csvName={`recall-${recall.code}-here`}
        empty={t('nothingHere')}
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (row) => row.itemName,
            text: (row) => row.itemName,
          },
          {
            key: 'lot',
            title: t('lot'),
            cell: (row) => (
              <>
                <LotLink code={row.lot} />{' '}
                {row.learnedLater && <State tone="caution">{t('learnedLater')}</State>}
              </>
            ),
            text: (row) => row.lot,
          },
          {
            key: 'quantity',
            title: t('onHand'),
            numeric: true,
            cell: (row) => formats.quantity(row.quantity, row.unit),
            text: (row) => row.quantity,
          },
          {
            key: 'place',
            title: t('place'),
            cell: (row) => row.place ?? '–',
            text: (row) => row.place ?? '',
          },
          {
            key: 'held',
            title: t('state'),
            cell: (row) =>
              row.held ? (
                <State tone="good">{t('onHold')}</State>
              ) : (
                <State tone={isReal ? 'warn' : 'plain'}>
                  {t(isReal ? 'notOnHold' : 'notHeldRehearsal')}
                </State>
              ),
            text: (row) => (row.held ? 'yes' : 'NO'),
          },
        ]}
      />
    </Section>
  );
};
