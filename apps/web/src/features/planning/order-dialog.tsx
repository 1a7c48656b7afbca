import { Button } from '@mantine/core';
import { useState } from 'react';
import { useBooking } from '../../api/use-api';
import { newId } from '../../api/new-id';
import { addDays } from '../../shared/formats/days';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { DayField, TextField } from '../../shared/kit/fields';
import { ItemPicker } from '../../shared/pickers/item-picker';
import { CustomerPicker } from '../../shared/pickers/party-pickers';
import { planMessages } from './messages';

interface Line {
  readonly key: string;
  readonly itemId: string;
  readonly quantity: string;
}

const newLine = (): Line => ({ key: newId(), itemId: '', quantity: '' });

/** Writes an order: for whom, for when, how many of what. */
export const OrderDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const t = useMessages(planMessages);
  const formats = useFormats();
  const book = useBooking();
  const [customerId, setCustomer] = useState('');
  const [dueOn, setDueOn] = useState(addDays(formats.today(), 7));
  const [note, setNote] = useState('');
  const [lines, setLines] = useState<readonly Line[]>([newLine()]);
  const put = (key: string, part: Partial<Line>): void =>
    setLines(lines.map((line) => (line.key === key ? { ...line, ...part } : line)));
  const save = async (): Promise<void> => {
    const body = {
      customerId: customerId === '' ? null : customerId,
      dueOn,
      note: note === '' ? null : note,
      lines: lines
        .filter(({ itemId }) => itemId !== '')
        .map(({ itemId, quantity }) => ({ itemId, quantity })),
    };
    await book({
      path: '/api/orders',
      body,
      label: t('orderLabel', { day: formats.day(dueOn) }),
      lane: 'orders',
    });
  };
  return (
    <EditDialog title={t('addOrder')} size="lg" onClose={onClose} onSave={save}>
      {(errors) => (
        <>
          <CustomerPicker value={customerId} onChange={setCustomer} empty={t('counter')} />
          <DayField
            label={t('due')}
            value={dueOn}
            onChange={setDueOn}
            error={errors['dueOn']}
            required
          />
          {lines.map((line, at) => (
            <div key={line.key} className="columns columns-end">
              <ItemPicker
                label={t('what')}
                kinds={['box', 'piece']}
                value={line.itemId}
                onChange={(itemId) => put(line.key, { itemId })}
                error={errors[`lines.${String(at)}.itemId`]}
              />
              <DecimalField
                label={t('quantity')}
                unit="pc"
                value={line.quantity}
                onChange={(quantity) => put(line.key, { quantity })}
                error={errors[`lines.${String(at)}.quantity`]}
              />
              {lines.length > 1 && (
                <Button
                  variant="default"
                  onClick={() => setLines(lines.filter(({ key }) => key !== line.key))}
                >
                  {t('remove')}
                </Button>
              )}
            </div>
          ))}
          <Button variant="default" onClick={() => setLines([...lines, newLine()])}>
            {t('addLine')}
          </Button>
          <TextField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
        </>
      )}
    </EditDialog>
  );
};
