import type { components } from '../../api/schema';
import type { Role } from './draw-form';

type Correction = components['schemas']['CorrectionDto'];
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

/** Every list is named, so that the service sees one correction, whole. */
export const correctionBody = (form: CorrectForm): Correction => ({
  reason: form.reason.trim(),
  reversedDrawIds: [...form.drawsBack],
  draws: form.draws.map(({ lotCode, quantity, role }) => ({
    lotCode: lotCode.trim(),
    quantity,
    ...(role === '' ? {} : { role: role as Role }),
    reason: form.reason.trim(),
  })),
  reversedLossIds: [...form.lossesBack],
  losses: form.losses.map(({ kind, mass }) => ({ kind, massGrams: mass })),
});
