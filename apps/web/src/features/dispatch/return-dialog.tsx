import { useState } from 'react';
import { useBooking } from '../../api/use-api';
import type { Row } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, OneOf, TextField } from '../../shared/kit/fields';
import { dispatchMessages } from './messages';

type Dispatch = Row<'/api/dispatches'>;
type Outcome = 'restocked' | 'wasted';

/** Goods come back: on the shelf again, or thrown away. */
export const ReturnDialog = (props: {
  readonly dispatch: Dispatch;
  readonly onClose: () => void;
}) => {
  const { dispatch, onClose } = props;
  const t = useMessages(dispatchMessages);
  const book = useBooking();
  const [lotCode, setLotCode] = useState(dispatch.lines[0]?.lotCode ?? '');
  const [quantity, setQuantity] = useState('');
  const [outcome, setOutcome] = useState<Outcome>('restocked');
  const [reason, setReason] = useState('');
  return (
    <EditDialog
      title={t('takeBackTitle')}
      confirm={t('takeBack')}
      onClose={onClose}
      onSave={() =>
        book({
          path: '/api/dispatches/{id}/returns',
          at: { id: dispatch.id },
          body: { reason, lines: [{ lotCode, quantity, outcome }] },
          label: t('takeBackLabel', { code: dispatch.code }),
          lane: 'dispatches',
        })
      }
    >
      {(errors) => (
        <>
          <ChoiceField
            label={t('lot')}
            value={lotCode}
            onChange={setLotCode}
            choices={dispatch.lines.map((line) => ({
              value: line.lotCode,
              label: `${line.itemName} · ${line.lotCode}`,
            }))}
          />
          <DecimalField
            label={t('quantity')}
            unit={dispatch.lines.find((line) => line.lotCode === lotCode)?.unit ?? 'pc'}
            value={quantity}
            onChange={setQuantity}
            error={errors['lines.0.quantity']}
            required
          />
          <OneOf
            label={t('outcome')}
            value={outcome}
            onChange={(next) => setOutcome(next as Outcome)}
            choices={(['restocked', 'wasted'] as const).map((one) => ({
              value: one,
              label: t(one),
            }))}
          />
          <TextField
            label={t('reason')}
            value={reason}
            onChange={setReason}
            error={errors['reason']}
            required
          />
        </>
      )}
    </EditDialog>
  );
};
