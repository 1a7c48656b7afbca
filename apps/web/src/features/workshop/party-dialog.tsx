import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { LongField, OneOf, TextField, TickField } from '../../shared/kit/fields';
import { workshopMessages } from './messages';
import { formOf, type Party, type PartyForm } from './party';

interface Props {
  readonly title: string;
  readonly party: Party | undefined;
  readonly customer: boolean;
  readonly onClose: () => void;
  readonly onSave: (form: PartyForm) => Promise<unknown>;
}

/** The form of a supplier or a customer. */
export const PartyDialog = ({ title, party, customer, onClose, onSave }: Props) => {
  const t = useMessages(workshopMessages);
  const word = useServiceWords();
  const queries = useQueryClient();
  const [form, setForm] = useState(() => formOf(party));
  const put = (change: Partial<PartyForm>): void => setForm((now) => ({ ...now, ...change }));
  const save = async (): Promise<void> => {
    await onSave(form);
    await queries.invalidateQueries();
  };
  return (
    <EditDialog title={title} onClose={onClose} onSave={save}>
      {(errors) => (
        <>
          <TextField
            label={t('name')}
            value={form.name}
            onChange={(name) => put({ name })}
            error={errors['name']}
            required
          />
          <LongField
            label={t('address')}
            value={form.address}
            onChange={(address) => put({ address })}
            error={errors['addressLines']}
          />
          <TextField
            label={t('phone')}
            type="tel"
            value={form.phone}
            onChange={(phone) => put({ phone })}
            error={errors['phone']}
          />
          <TextField
            label={t('email')}
            type="email"
            value={form.email}
            onChange={(email) => put({ email })}
            error={errors['email']}
          />
          {customer && (
            <>
              <OneOf
                label={t('priceList')}
                value={form.priceList}
                onChange={(list) => put({ priceList: list as PartyForm['priceList'] })}
                choices={['trade', 'counter'].map((list) => ({ value: list, label: word(list) }))}
              />
              <TextField
                label={t('minimumLife')}
                value={form.minimumLifeDays}
                onChange={(days) => put({ minimumLifeDays: days.replace(/\D/g, '') })}
                error={errors['minimumLifeDays']}
              />
            </>
          )}
          <LongField
            label={t('note')}
            value={form.note}
            onChange={(note) => put({ note })}
            error={errors['note']}
          />
          {party !== undefined && (
            <TickField
              label={t('inUse')}
              checked={form.active}
              onChange={(active) => put({ active })}
            />
          )}
        </>
      )}
    </EditDialog>
  );
};
