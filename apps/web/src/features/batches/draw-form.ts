import type { components } from '../../api/schema';
import { compareExact, subtractExact } from '../../shared/formats/exact';
import type { Line } from './drawn-lot';

type Draw = components['schemas']['DrawDto'];
export type Role = NonNullable<Draw['role']>;

export const ROLES: readonly Role[] = [
  'base',
  'infusion',
  'shell',
  'filling',
  'cap',
  'decoration',
  'slot',
  'packaging',
  'rework',
];

export interface DrawForm {
  readonly lotCode: string;
  readonly quantity: string;
  readonly role: string;
  readonly reason: string;
  /** Item of the recipe that the lot stands in for; empty when it comes in addition. */
  readonly insteadOf: string;
  /** Lot and item whose comparison the person has accepted: another lot is another question. */
  readonly accepted: string;
}

export const restOf = (line: Line | undefined): string => {
  if (line === undefined) return '';
  const rest = subtractExact(line.plannedQuantity, line.drawnQuantity);
  return compareExact(rest, '0') > 0 ? rest : '';
};

export const startOf = (line: Line | undefined, scannedLot: string | undefined): DrawForm => ({
  lotCode: scannedLot ?? line?.proposedLots[0]?.lotCode ?? '',
  quantity: scannedLot === undefined && line?.unit === 'pc' ? restOf(line) : '',
  role: '',
  reason: '',
  insteadOf: line?.itemId ?? '',
  accepted: '',
});

export const acceptance = (form: Pick<DrawForm, 'lotCode' | 'insteadOf'>): string =>
  `${form.lotCode.trim()} for ${form.insteadOf}`;

type Changes = Pick<components['schemas']['SubstitutionView'], 'allergens'>;
type Accepted = NonNullable<Draw['acceptance']>;

/** What was read and accepted, allergen by allergen: the service lets nothing else in. */
export const acceptanceOf = (changes: Changes, insteadOf: string): Accepted => ({
  insteadOfItemId: insteadOf === '' ? null : insteadOf,
  allergens: changes.allergens
    .filter(({ isWorse }) => isWorse)
    .map(({ allergen, after }) => ({ allergen, after }) as Accepted['allergens'][number]),
});

/**
 * What is booked. A substitute takes the role of the line it stands in for; something in addition
 * takes the role that a person states; a line's own item takes the line's.
 * @param changes what a lot that the recipe doesn't name changes, as the person has accepted it
 */
export const drawBody = (form: DrawForm, line: Line | undefined, changes?: Changes): Draw => {
  const role = line?.role ?? form.role;
  return {
    lotCode: form.lotCode.trim(),
    quantity: form.quantity,
    ...(role === '' ? {} : { role: role as Role }),
    ...(form.reason.trim() === '' ? {} : { reason: form.reason.trim() }),
    ...(changes === undefined ? {} : { acceptance: acceptanceOf(changes, form.insteadOf) }),
  };
};
