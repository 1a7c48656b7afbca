import { api, must } from '../../api/client';
import { byId, seen } from '../../api/seen';
import { useList } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { workshopMessages } from './messages';
import { type Party, type PartyForm, supplierOf } from './party';
import { PartyRegister } from './party-register';

const save = (form: PartyForm, party: Party | undefined): Promise<unknown> =>
  party === undefined
    ? must(api.POST('/api/suppliers', { body: supplierOf(form) }))
    : must(
        api.PATCH('/api/suppliers/{id}', {
          ...byId(party.id),
          ...seen(party.version),
          body: { ...supplierOf(form), active: form.active },
        }),
      );

const Suppliers = () => {
  const t = useMessages(workshopMessages);
  const list = useList('/api/suppliers');
  return (
    <PartyRegister
      title={t('suppliers')}
      add={t('addSupplier')}
      customer={false}
      mayChange="maker"
      list={list}
      onSave={save}
    />
  );
};

export default Suppliers;
