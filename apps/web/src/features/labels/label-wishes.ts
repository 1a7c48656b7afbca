import type { components } from '../../api/schema';
import { emptyStock, stockOf, type StockForm } from './stock-form';

type Wishes = components['schemas']['LabelsDto'];
export type Language = NonNullable<Wishes['languages']>[number];
export type Market = NonNullable<Wishes['market']>;

export const MARKETS: readonly Market[] = ['EU', 'GB', 'NI', 'US'];
export const LANGUAGES: readonly Language[] = ['en', 'fr', 'de', 'nl', 'it', 'es'];

/** What is to be printed, while it is chosen. */
export interface LabelForm {
  readonly form: Wishes['form'];
  readonly copies: string;
  readonly price: string;
  readonly stock: StockForm;
  /** Empty: as the item is set. */
  readonly market: Market | '';
  readonly languages: readonly Language[];
}

export const emptyForm: LabelForm = {
  form: 'box_label',
  copies: '1',
  price: '',
  stock: emptyStock,
  market: '',
  languages: [],
};

/** One decision that was taken: on which finding, about what exactly, and why. */
export interface Taken {
  readonly code: string;
  readonly subject: string | null;
  readonly reason: string;
}

/** As the service takes it, the same to look at and to print. */
export const wishesOf = (form: LabelForm, taken: readonly Taken[]): Wishes => {
  const stock = stockOf(form.stock);
  return {
    form: form.form,
    copies: Number(form.copies),
    ...(form.market === '' ? {} : { market: form.market }),
    ...(form.languages.length === 0 ? {} : { languages: [...form.languages] }),
    ...(stock === undefined ? {} : { stock }),
    ...(form.price === '' ? {} : { price: form.price }),
    accepted: taken.filter(({ reason }) => reason.trim() !== '').map((entry) => ({ ...entry })),
  };
};
