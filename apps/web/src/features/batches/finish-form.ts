import type { components } from '../../api/schema';
import { addExact, compareExact, subtractExact } from '../../shared/formats/exact';

type Batch = components['schemas']['BatchView'];
type Finish = components['schemas']['FinishBatchDto'];
type LossKind = components['schemas']['FinalLossDto']['kind'];

/** What the form of finishing holds: every field as text. */
export interface FinishForm {
  readonly quantity: string;
  readonly mass: string;
  readonly placeId: string;
  readonly reworkItemId: string;
  readonly reworkMass: string;
  readonly rejectPieces: string;
  /** What the grams are called that neither came out nor were written down; empty: leave them. */
  readonly restKind: LossKind | '';
  readonly minutes: string;
  readonly imbalanceReason: string;
  readonly keepTogether: boolean;
}

type Trays = Pick<Batch, 'mouldUses'>;

/** Trays that were filled indeed: what was taken back holds no pieces. */
const filled = (batch: Trays): Batch['mouldUses'] =>
  batch.mouldUses.filter(({ withdrawnBecause }) => withdrawnBecause === null);

/** Good pieces of the trays so far: filled cavities without the rejects. */
export const goodPieces = (batch: Trays): number =>
  filled(batch).reduce((sum, use) => sum + use.cavitiesFilled - use.rejectCavities.length, 0);

export const rejectedPieces = (batch: Trays): number =>
  filled(batch).reduce((sum, use) => sum + use.rejectCavities.length, 0);

/** Grams that a filling still has to account for, given what came out. */
export const restOf = (batch: Pick<Batch, 'balance' | 'unit'>, form: FinishForm): string => {
  if (batch.unit !== 'g' || form.quantity === '') return '0';
  const out = addExact(form.quantity, form.reworkMass === '' ? '0' : form.reworkMass);
  return subtractExact(batch.balance.differenceGrams, out);
};

export const finishBody = (
  batch: Pick<Batch, 'balance' | 'unit'>,
  form: FinishForm,
  reworkUnit: string,
): Finish => {
  const place = form.placeId === '' ? {} : { placeId: form.placeId };
  const product = {
    quantity: form.quantity,
    ...(form.mass === '' || batch.unit === 'g' ? {} : { massGrams: form.mass }),
    ...place,
  };
  const rework =
    form.reworkMass === '' || form.reworkItemId === ''
      ? []
      : [
          {
            role: 'rework' as const,
            itemId: form.reworkItemId,
            quantity: form.reworkMass,
            ...(reworkUnit === 'g' ? {} : { massGrams: form.reworkMass }),
            ...place,
          },
        ];
  const rest = restOf(batch, form);
  const losses = [
    ...(form.restKind !== '' && compareExact(rest, '0') > 0
      ? [{ kind: form.restKind, massGrams: rest }]
      : []),
    ...(Number(form.rejectPieces) > 0
      ? [{ kind: 'rejects' as const, pieces: Number(form.rejectPieces) }]
      : []),
  ];
  return {
    outputs: [product, ...rework],
    losses,
    ...(form.minutes === '' ? {} : { labourMinutes: form.minutes }),
    ...(form.imbalanceReason === '' ? {} : { imbalanceReason: form.imbalanceReason }),
    ...(form.keepTogether ? { keepTogether: true } : {}),
  };
};
