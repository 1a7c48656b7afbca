import type { LabelContent } from '../../domain/label/content';
import { eMarkHeightRatio, mmToPt, sizeForDigitHeight, sizeForXHeight } from '../kit/fonts';

/** Type sizes of one label, in points, all worked back from heights in millimetres. */
export interface LabelType {
  readonly xHeightMm: number;
  readonly bodyPt: number;
  readonly namePt: number;
  readonly quantityPt: number;
  readonly eMarkPt: number;
}

const NAME_RATIO = 1.3;

export const labelType = ({ quantity }: LabelContent, xHeightMm: number): LabelType => {
  const bodyPt = sizeForXHeight(xHeightMm);
  const digitsPt = quantity === null ? 0 : sizeForDigitHeight('bold', quantity.minDigitHeightMm);
  const eMarkMm = quantity?.minEMarkHeightMm ?? 0;
  return {
    xHeightMm,
    bodyPt,
    namePt: bodyPt * NAME_RATIO,
    quantityPt: Math.max(bodyPt, digitsPt),
    eMarkPt: Math.max(
      bodyPt,
      Math.ceil((mmToPt(eMarkMm) / eMarkHeightRatio('regular')) * 100) / 100,
    ),
  };
};
