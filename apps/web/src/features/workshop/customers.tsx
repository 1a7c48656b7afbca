import { api, must } from '../../api/client';
import { byId, seen } from '../../api/seen';
import { useList } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { workshopMessages } from './messages';
import { customerOf, type Party, type PartyForm } from './party';
import { PartyRegister } from './party-register';

const save = (form: PartyForm, party: Party | undefined): Promise<unknown> =>
  party === undefined
    ? must(api.POST('/api/customers', { body: customerOf(form) }))
    : must(
        api.PATCH('/api/customers/{id}', {
          ...byId(party.id),
          ...seen(party.version),
          body: { ...customerOf(form), active: form.active },
        }),
      );

const Customers = () => {
  const t = useMessages(workshopMessages);
  const list = useList('/api/customers');
  return (
    <PartyRegister
      title={t('customers')}
      add={t('addCustomer')}
      customer
      mayChange="seller"
      list={list}
      onSave={save}
    />
  );
};

export default Customers;
