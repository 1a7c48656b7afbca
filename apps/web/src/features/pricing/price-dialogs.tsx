import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { byId } from '../../api/seen';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { DayField, TextField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { priceMessages } from './messages';

type Price = components['schemas']['ItemPriceView'];
type PriceListKind = 'counter' | 'trade';

interface Props {
  readonly itemId: string;
  readonly list: PriceListKind;
  readonly price: Price;
  readonly onClose: () => void;
}

/** Sets what the item costs from a day on; what it was stays on record. */
export const SetPriceDialog = ({ itemId, list, price, onClose }: Props) => {
  const t = useMessages(priceMessages);
  const formats = useFormats();
  const queries = useQueryClient();
  const [amount, setAmount] = useState(
    list === 'counter' ? price.proposed.gross : price.proposed.net,
  );
  const [fromDay, setFromDay] = useState(formats.today());
  const [note, setNote] = useState('');
  return (
    <EditDialog
      title={t('set')}
      onClose={onClose}
      onSave={async () => {
        const body = { list, price: amount, fromDay, ...(note === '' ? {} : { note }) };
        await must(api.POST('/api/items/{id}/prices', { ...byId(itemId), body }));
        await queries.invalidateQueries();
      }}
    >
      {(errors) => (
        <>
          <DecimalField
            label={list === 'counter' ? t('priceGross') : t('priceNet')}
            unit={formats.currency}
            value={amount}
            onChange={setAmount}
            error={errors['price']}
            required
          />
          <DayField
            label={t('fromDay')}
            value={fromDay}
            onChange={setFromDay}
            error={errors['fromDay']}
          />
          <TextField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
          <Caution>{t('taxCaution')}</Caution>
        </>
      )}
    </EditDialog>
  );
};
