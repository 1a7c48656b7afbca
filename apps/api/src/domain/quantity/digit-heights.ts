import type { Decimal } from '../units';

/** The e-mark is at least this high (Directive 76/211/EEC, Annex I, point 3.3). */
export const E_MARK_HEIGHT_MM = 3;

/** Height of the figures of a net quantity (Directive 76/211/EEC, Annex I, point 3.1). */
export const minDigitHeightMm = (netG: Decimal): number => {
  if (netG.greaterThan(1000)) return 6;
  if (netG.greaterThan(200)) return 4;
  return netG.greaterThan(50) ? 3 : 2;
};

const CM2_IN_A_SQUARE_INCH = 6.4516;
const MM_IN_AN_INCH = 25.4;

/** 21 CFR 101.7(i) (from memory): area of the display panel in square inches → inches of type. */
const PANEL_STEPS: readonly { readonly upToIn2: number; readonly inches: number }[] = [
  { upToIn2: 5, inches: 1 / 16 },
  { upToIn2: 25, inches: 1 / 8 },
  { upToIn2: 100, inches: 3 / 16 },
  { upToIn2: 400, inches: 1 / 4 },
];

/** Millimetres as `number`: lengths of type, good to a thousandth. */
export const panelTypeHeightMm = (panelAreaCm2: Decimal): number => {
  const area = panelAreaCm2.toNumber() / CM2_IN_A_SQUARE_INCH;
  const inches = PANEL_STEPS.find(({ upToIn2 }) => area <= upToIn2)?.inches ?? 1 / 2;
  return inches * MM_IN_AN_INCH;
};

/** 21 CFR 101.1: rectangle, cylinder (40 % of its mantle) or any other shape (40 % of all). */
export const panelAreaOf = (
  shape: 'rectangle' | 'cylinder' | 'other',
  areaCm2: Decimal,
): Decimal => (shape === 'rectangle' ? areaCm2 : areaCm2.times(40).dividedBy(100));

/** Largest surface under which the small letters do (Regulation (EU) No 1169/2011, Article 13(3)). */
const SMALL_SURFACE_CM2 = 80;

/** Least height of a lower-case x. */
export const minXHeightMm = (largestSurfaceCm2: Decimal): number =>
  largestSurfaceCm2.lessThan(SMALL_SURFACE_CM2) ? 0.9 : 1.2;

/** Least type of the United States' information panel: 1/16 inch of lower-case o (101.2(c)). */
export const US_X_HEIGHT_MM = MM_IN_AN_INCH / 16;
