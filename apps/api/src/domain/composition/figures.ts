import { POLYOL_KINDS, SUGAR_KINDS, type PolyolKind, type SugarKind } from '../specification';
import { Decimal, sum, ZERO } from '../units';
import { totalG, type MakeUp } from './make-up';
import { totalFatG, totalPolyolsG, totalSugarsG } from './totals';

/** g/mL at 20 °C. Fat, sugar, cocoa and milk: fitted to bars weighed by H. Banks 2012. */
const DENSITY = {
  fat: new Decimal('0.97'),
  sugar: new Decimal('1.587'),
  cocoa: new Decimal('1.50'),
  milk: new Decimal('1.40'),
  water: new Decimal('0.998'),
  alcohol: new Decimal('0.789'),
};

/**
 * Density from composition, g/mL: the volumes add. Within 1.3 % for bars of chocolate; air in a
 * ganache lowers it, so a filling's density is measured with a cup. Null for an empty make-up or
 * when part of the weight has no composition.
 */
export const densityGPerMl = (makeUp: MakeUp): Decimal | null => {
  const total = totalG(makeUp);
  if (!total.greaterThan(0) || makeUp.parts.unstated.greaterThan(0)) return null;
  const fat = totalFatG(makeUp);
  const sweet = totalSugarsG(makeUp).plus(totalPolyolsG(makeUp));
  const wet = makeUp.parts.water.plus(makeUp.parts.alcohol);
  const rest = Decimal.max(0, total.minus(fat).minus(sweet).minus(wet));
  const cocoa = Decimal.min(rest, makeUp.fatFreeCocoa);
  const volume = sum([
    fat.dividedBy(DENSITY.fat),
    sweet.dividedBy(DENSITY.sugar),
    cocoa.dividedBy(DENSITY.cocoa),
    rest.minus(cocoa).dividedBy(DENSITY.milk),
    makeUp.parts.water.dividedBy(DENSITY.water),
    makeUp.parts.alcohol.dividedBy(DENSITY.alcohol),
  ]);
  return total.dividedBy(volume);
};

/**
 * Sweetness by mass, sucrose 1 (sugars: Bender, Dictionary of Food and Nutrition; polyols: middle of
 * the spread in reviews of sweeteners; glycerol and hydrogenated starch from memory).
 */
const SWEETNESS: Readonly<Record<SugarKind | PolyolKind, string>> = {
  sucrose: '1', glucose: '0.74', fructose: '1.73', lactose: '0.16', maltose: '0.33',
  otherSugar: '0.3', sorbitol: '0.6', maltitol: '0.7', isomalt: '0.55', lactitol: '0.4',
  xylitol: '1', mannitol: '0.5', erythritol: '0.7', glycerol: '0.6', hydrogenatedStarch: '0.4',
}; // prettier-ignore

/** Syrup solids by DE: 0.45 at DE 40, 0.60 at DE 60 (from memory), straight between. */
const syrupSweetness = (dextroseEquivalent: string): Decimal =>
  new Decimal(dextroseEquivalent).times('0.0075').plus('0.15');

/**
 * Relative sweetness, grams of sucrose that taste as sweet as 100 g. Only for comparing recipes:
 * cold, fat and bitterness change the taste. Null for an empty make-up.
 */
export const relativeSweetness = (makeUp: MakeUp): Decimal | null => {
  const total = totalG(makeUp);
  if (!total.greaterThan(0)) return null;
  const apart = withoutSyrups(makeUp);
  const sugars = SUGAR_KINDS.map((kind) => apart[kind].times(SWEETNESS[kind]));
  const polyols = POLYOL_KINDS.map((kind) => makeUp.parts[kind].times(SWEETNESS[kind]));
  const syrups = [...makeUp.syrups].map(([de, grams]) => grams.times(syrupSweetness(de)));
  return sum([...sugars, ...polyols, ...syrups])
    .times(100)
    .dividedBy(total);
};

/** Grams of each sugar, and of higher saccharides, once the solids of glucose syrups are out. */
export const withoutSyrups = (makeUp: MakeUp): Record<SugarKind | 'higherSaccharides', Decimal> => {
  const { parts, inSyrup } = makeUp;
  return {
    sucrose: parts.sucrose,
    fructose: parts.fructose,
    lactose: parts.lactose,
    otherSugar: parts.otherSugar,
    glucose: parts.glucose.minus(inSyrup.glucose),
    maltose: parts.maltose.minus(inSyrup.maltose),
    higherSaccharides: parts.higherSaccharides.minus(inSyrup.higherSaccharides),
  };
};

export interface FatMix {
  /** Milk fat in milk fat and cocoa butter, 0–1; null when there is neither. */
  readonly milkFatRatio: Decimal | null;
  /** Nut and other liquid fat in all fat, 0–1; null without fat. */
  readonly softFatRatio: Decimal | null;
}

export const fatMix = (makeUp: MakeUp): FatMix => {
  const { milkFat, cocoaButter, nutFat, otherFat } = makeUp.parts;
  const hard = milkFat.plus(cocoaButter);
  const fat = totalFatG(makeUp);
  return {
    milkFatRatio: hard.isZero() ? null : milkFat.dividedBy(hard),
    softFatRatio: fat.isZero() ? null : nutFat.plus(otherFat).dividedBy(fat),
  };
};

/** Per cent by weight of the whole; zero for an empty make-up. */
export const percentOf = (grams: Decimal, makeUp: MakeUp): Decimal => {
  const total = totalG(makeUp);
  return total.isZero() ? ZERO : grams.times(100).dividedBy(total);
};
