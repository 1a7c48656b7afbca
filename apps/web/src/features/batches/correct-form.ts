import type { components } from '../../api/schema';
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

export interface CorrectForm {
  readonly draws: readonly RightDraw[];
  readonly losses: readonly RightLoss[];
  readonly drawsBack: readonly string[];
  readonly lossesBack: readonly string[];
  readonly reason: string;
}

export const nothingCorrected: CorrectForm = {
  draws: [],
  losses: [],
  drawsBack: [],
  lossesBack: [],
  reason: '',
};

export const isEmpty = (form: CorrectForm): boolean =>
  form.draws.length + form.losses.length + form.drawsBack.length + form.lossesBack.length === 0;

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
});
