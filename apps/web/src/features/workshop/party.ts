import type { components } from '../../api/schema';

type Supplier = components['schemas']['SupplierView'];
type Customer = components['schemas']['CustomerView'];

export type Party = Supplier & Partial<Pick<Customer, 'priceList' | 'minimumLifeDays'>>;

/** What a form of a supplier or a customer holds: every field as text. */
export interface PartyForm {
  readonly name: string;
  readonly address: string;
  readonly email: string;
  readonly phone: string;
  readonly note: string;
  readonly active: boolean;
  readonly priceList: Customer['priceList'];
  readonly minimumLifeDays: string;
}

const empty: PartyForm = {
  name: '',
  address: '',
  email: '',
  phone: '',
  note: '',
  active: true,
  priceList: 'trade',
  minimumLifeDays: '0',
};

export const formOf = (party: Party | undefined): PartyForm =>
  party === undefined
    ? empty
    : {
        name: party.name,
        address: party.addressLines.join('\n'),
        email: party.email ?? '',
        phone: party.phone ?? '',
        note: party.note ?? '',
        active: party.active,
        priceList: party.priceList ?? 'trade',
        minimumLifeDays: String(party.minimumLifeDays ?? 0),
      };

const orNull = (text: string): string | null => (text.trim() === '' ? null : text.trim());

export const supplierOf = (form: PartyForm) => ({
  name: form.name.trim(),
  addressLines: form.address
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== ''),
  email: orNull(form.email),
  phone: orNull(form.phone),
  note: orNull(form.note),
});

export const customerOf = (form: PartyForm) => ({
  ...supplierOf(form),
  priceList: form.priceList,
  minimumLifeDays: Number(form.minimumLifeDays),
});
