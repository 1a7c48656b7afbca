import type { QuantityMark } from '../label/content';
import type { MarketRules } from '../market';
import type { Language } from '../specification';
import { Decimal } from '../units';
import { figureIn, NBSP, wordsIn } from '../words';
import { minDigitHeightMm, panelTypeHeightMm, E_MARK_HEIGHT_MM } from './digit-heights';
import { netWeightUs } from './ounces';

export interface PackContents {
  /** Nominal net weight of all the food. */
  readonly netG: Decimal;
  /**
   * `loose`: pieces lie unwrapped, total only. `wrapped`: packages that aren't sold singly, total
   * and number. `singles`: packs of one quantity that are sold singly, each and number.
   * `by_number`: sold by number, which is counted through the pack or stated.
   */
  readonly form: 'loose' | 'wrapped' | 'singles' | 'by_number';
  readonly count: number | null;
  /** From 1000 g: as kilograms, or still as grams. */
  readonly largeUnit: 'kg' | 'g';
}

export interface QuantitySettings {
  /** Packed to the rules of Directive 76/211/EEC and its batch accepted. */
  readonly eMarkEarned: boolean;
  /** Area of the principal display panel, for markets whose type grows with it. */
  readonly panelAreaCm2: Decimal;
  readonly language: Language;
}

/** Below this no quantity is due (Regulation (EU) No 1169/2011, Annex IX, point 1(b)). */
const NO_QUANTITY_UNDER_G = 5;
/** The e-mark's Directive covers 5 g to 10 kg. */
const E_MARK_UP_TO_G = 10_000;

const metric = (netG: Decimal, largeUnit: 'kg' | 'g', language: Language): string =>
  netG.greaterThanOrEqualTo(1000) && largeUnit === 'kg'
    ? `${figureIn(netG.dividedBy(1000).toString(), language)}${NBSP}kg`
    : `${figureIn(netG.toString(), language)}${NBSP}g`;

const europeanText = (pack: PackContents, language: Language): string => {
  const { netG, count, largeUnit } = pack;
  const total = metric(netG, largeUnit, language);
  const pieces = wordsIn(language).label.pieces;
  if (count === null || pack.form === 'loose') return total;
  if (pack.form === 'by_number') return `${count}${NBSP}${pieces}`;
  if (pack.form === 'wrapped') return `${total}, ${count}${NBSP}${pieces}`;
  return `${count}${NBSP}×${NBSP}${metric(netG.dividedBy(count), largeUnit, language)}`;
};

/** The quantity as printed, with the height of its figures; null when none is due. */
export const quantityMark = (
  pack: PackContents,
  market: MarketRules,
  settings: QuantitySettings,
): QuantityMark | null => {
  if (market.quantityStyle === 'ounces_and_metric') {
    return {
      text: netWeightUs(pack.netG),
      minDigitHeightMm: panelTypeHeightMm(settings.panelAreaCm2),
      eMark: false,
      minEMarkHeightMm: 0,
    };
  }
  if (pack.form !== 'by_number' && pack.netG.lessThan(NO_QUANTITY_UNDER_G)) return null;
  const eMark =
    settings.eMarkEarned &&
    market.mayUseEMark &&
    pack.form !== 'by_number' &&
    pack.netG.greaterThanOrEqualTo(NO_QUANTITY_UNDER_G) &&
    pack.netG.lessThanOrEqualTo(E_MARK_UP_TO_G);
  return {
    text: europeanText(pack, settings.language),
    minDigitHeightMm: minDigitHeightMm(pack.netG),
    eMark,
    minEMarkHeightMm: eMark ? E_MARK_HEIGHT_MM : 0,
  };
};
