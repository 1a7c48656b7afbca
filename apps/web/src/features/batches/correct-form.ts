import type { components } from '../../api/schema';
import { newId } from '../../api/new-id';
import type { ForeignLots } from './correct-substitutes';
import { acceptanceOf, type Role } from './draw-form';

type Correction = components['schemas']['CorrectionDto'];
type Draw = components['schemas']['DrawDto'];
type LossKind = components['schemas']['LossDto']['kind'];

export interface RightDraw {
  readonly key: string;
  readonly lotCode: string;
  readonly quantity: string;
  readonly role: string;
}

export interface RightLoss {
  readonly key: string;
  readonly kind: LossKind;
  readonly mass: string;
}

export interface RightOutput {
  readonly key: string;
  /** The lot that it was asked for, by ticking it; null for one that was added beside. */
  readonly instead: string | null;
  readonly role: 'product' | 'rework';
  /** Of rework; a product is what the recipe makes. */
  readonly itemId: string;
  readonly quantity: string;
  readonly mass: string;
  readonly placeId: string;
}

type Output = components['schemas']['BatchOutputView'];

/** The quantity is left to be counted anew: it is the figure that was wrong. */
export const rightOutput = (wrong: Pick<Output, 'id' | 'role' | 'itemId'> | null): RightOutput => ({
  key: newId(),
  instead: wrong?.id ?? null,
  role: wrong?.role ?? 'product',
  itemId: wrong?.role === 'rework' ? wrong.itemId : '',
  quantity: '',
  mass: '',
  placeId: '',
});

export interface CorrectForm {
  readonly draws: readonly RightDraw[];
  readonly losses: readonly RightLoss[];
  readonly drawsBack: readonly string[];
  readonly lossesBack: readonly string[];
  readonly outputs: readonly RightOutput[];
  readonly outputsBack: readonly string[];
  readonly reason: string;
}

export const nothingCorrected: CorrectForm = {
  draws: [],
  losses: [],
  drawsBack: [],
  lossesBack: [],
  outputs: [],
  outputsBack: [],
  reason: '',
};

export const isEmpty = (form: CorrectForm): boolean =>
  [form.draws, form.losses, form.drawsBack, form.lossesBack, form.outputs, form.outputsBack].every(
    ({ length }) => length === 0,
  );

const outputBody = (output: RightOutput): NonNullable<Correction['outputs']>[number] => ({
  role: output.role,
  ...(output.role === 'rework' && output.itemId !== '' ? { itemId: output.itemId } : {}),
  quantity: output.quantity,
  ...(output.mass === '' ? {} : { massGrams: output.mass }),
  ...(output.placeId === '' ? {} : { placeId: output.placeId }),
});

const rightDraw = (draw: RightDraw, reason: string, foreign: ForeignLots): Draw => {
  const lotCode = draw.lotCode.trim();
  const changes = foreign.accepted.includes(lotCode) ? foreign.changes[lotCode] : undefined;
  return {
    lotCode,
    quantity: draw.quantity,
    ...(draw.role === '' ? {} : { role: draw.role as Role }),
    reason,
    ...(changes === undefined ? {} : { acceptance: acceptanceOf(changes, '') }),
  };
};

/** Every list is named, so that the service sees one correction, whole. */
export const correctionBody = (form: CorrectForm, foreign: ForeignLots): Correction => ({
  reason: form.reason.trim(),
  reversedDrawIds: [...form.drawsBack],
  draws: form.draws.map((draw) => rightDraw(draw, form.reason.trim(), foreign)),
  reversedLossIds: [...form.lossesBack],
  losses: form.losses.map(({ kind, mass }) => ({ kind, massGrams: mass })),
  reversedOutputIds: [...form.outputsBack],
  outputs: form.outputs.map(outputBody),
});
