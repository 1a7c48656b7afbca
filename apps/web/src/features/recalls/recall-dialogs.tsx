import { useState } from 'react';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, LongField, OneOf } from '../../shared/kit/fields';
import { recallMessages } from './messages';
import { type Recall, useRecallStep } from './use-recall-step';

interface Props {
  readonly recall: Recall;
  readonly onClose: () => void;
}

const COUNTER = 'counter';

/** Goods came back: from whom, which lot, how many; each is booked back or as destroyed. */
export const RecoverDialog = ({ recall, onClose }: Props) => {
  const t = useMessages(recallMessages);
  const step = useRecallStep(recall);
  const sales = [...recall.scope.sales, ...recall.learned.sales];
  const [customerId, setCustomer] = useState(sales[0]?.customerId ?? COUNTER);
  const [lot, setLot] = useState(sales[0]?.lot ?? '');
  const [quantity, setQuantity] = useState('');
  const [outcome, setOutcome] = useState<'returned' | 'destroyed'>('returned');
  const lots = [
    ...new Map(
      sales
        .filter((sale) => (sale.customerId ?? COUNTER) === customerId)
        .map((sale) => [sale.lot, sale]),
    ).values(),
  ];
  const names = new Map(recall.customers.map(({ id, name }) => [id, name]));
  const who = [...new Set(sales.map((sale) => sale.customerId ?? COUNTER))];
  const chosen = lots.find((sale) => sale.lot === lot) ?? lots[0];
  return (
    <EditDialog
      title={t('recover')}
      onClose={onClose}
      long={t('throughScope')}
      onSave={(watched) =>
        step(
          '/api/recalls/{code}/recoveries',
          {
            lines: [
              {
                lot: chosen?.lot ?? lot,
                customerId: customerId === COUNTER ? null : customerId,
                quantity,
                outcome,
              },
            ],
          },
          t('recoverLabel'),
          watched,
        )
      }
    >
      {(errors) => (
        <>
          <ChoiceField
            label={t('who')}
            value={customerId}
            onChange={setCustomer}
            choices={who.map((id) => ({ value: id, label: names.get(id) ?? t('counter') }))}
          />
          <ChoiceField
            label={t('lot')}
            value={chosen?.lot ?? ''}
            onChange={setLot}
            choices={lots.map((sale) => ({
              value: sale.lot,
              label: `${sale.itemName} · ${sale.lot}`,
            }))}
            error={errors['lines.0.lot']}
          />
          <DecimalField
            label={t('quantity')}
            unit={chosen?.unit ?? 'pc'}
            value={quantity}
            onChange={setQuantity}
            error={errors['lines.0.quantity']}
            required
          />
          <OneOf
            label={t('outcome')}
            value={outcome}
            onChange={(next) => setOutcome(next as 'returned' | 'destroyed')}
            choices={(['returned', 'destroyed'] as const).map((one) => ({
              value: one,
              label: t(one),
            }))}
          />
        </>
      )}
    </EditDialog>
  );
};

export const CloseDialog = ({ recall, onClose }: Props) => {
  const t = useMessages(recallMessages);
  const step = useRecallStep(recall);
  const [conclusion, setConclusion] = useState('');
  return (
    <EditDialog
      title={t('close')}
      confirm={t('close')}
      onClose={onClose}
      long={t('throughScope')}
      onSave={(watched) => step('/api/recalls/{code}/close', { conclusion }, t('close'), watched)}
    >
      {(errors) => (
        <LongField
          label={t('conclusion')}
          value={conclusion}
          onChange={setConclusion}
          error={errors['conclusion']}
          required
        />
      )}
    </EditDialog>
  );
};

export const NoteDialog = ({ recall, onClose }: Props) => {
  const t = useMessages(recallMessages);
  const step = useRecallStep(recall);
  const [text, setText] = useState('');
  return (
    <EditDialog
      title={t('note')}
      onClose={onClose}
      long={t('throughScope')}
      onSave={(watched) =>
        step('/api/recalls/{code}/notes', { kind: 'note', text }, t('note'), watched)
      }
    >
      {(errors) => (
        <LongField
          label={t('noteText')}
          value={text}
          onChange={setText}
          error={errors['text']}
          required
        />
      )}
    </EditDialog>
  );
};
