import {
  FAT_KINDS,
  POLYOL_KINDS,
  SINGLE_PARTS,
  SUGAR_KINDS,
  statedGrams,
  type CompositionPer100g,
} from '../specification';
import { Decimal, sum, ZERO } from '../units';

/**
 * The parts of a composition on one level. `unaccounted` is what a row lacks to (or exceeds) its
 * 100 g; `unstated` is the weight of ingredients whose composition nobody stated. With these two the
 * parts always sum to the weight.
 */
export const PARTS = [
  ...SINGLE_PARTS, ...FAT_KINDS, ...SUGAR_KINDS, ...POLYOL_KINDS, 'unaccounted', 'unstated',
] as const; // prettier-ignore
export type Part = (typeof PARTS)[number];

/** Grams of every part in some weight of material, exact. */
export interface MakeUp {
  readonly parts: Readonly<Record<Part, Decimal>>;
  /** Grams that cut across the parts. */
  readonly fatFreeCocoa: Decimal;
  readonly milkSolids: Decimal;
  readonly dairyAsh: Decimal;
  /** Salt that is not part of the milk's minerals. */
  readonly freeSalt: Decimal;
  /** Solids of glucose syrups by dextrose equivalent. */
  readonly syrups: ReadonlyMap<string, Decimal>;
  /** The parts that those solids are made of. */
  readonly inSyrup: Readonly<Record<SyrupPart, Decimal>>;
}

/** In the order in which the solids of a syrup are read off a sheet. */
const SYRUP_PARTS = ['higherSaccharides', 'maltose', 'glucose'] as const;
type SyrupPart = (typeof SYRUP_PARTS)[number];

/** Ash in fat-free milk solids, g/g: skimmed milk powder, USDA SR28 01091 (7.93 in 96.07). */
const ASH_OF_MILK = new Decimal('7.93').dividedBy('96.07');

const partsOf = (value: (part: Part) => Decimal): Record<Part, Decimal> =>
  Object.fromEntries(PARTS.map((part) => [part, value(part)])) as Record<Part, Decimal>;

const EMPTY_PARTS = partsOf(() => ZERO);

export const NOTHING: MakeUp = {
  parts: EMPTY_PARTS,
  fatFreeCocoa: ZERO,
  milkSolids: ZERO,
  dairyAsh: ZERO,
  freeSalt: ZERO,
  syrups: new Map(),
  inSyrup: { higherSaccharides: ZERO, maltose: ZERO, glucose: ZERO },
};

const per100g = (composition: CompositionPer100g): Record<Part, Decimal> => {
  const { water, higherSaccharides, starch, protein, fibre, ash, salt, alcohol } = composition;
  const single = { water, higherSaccharides, starch, protein, fibre, ash, salt, alcohol };
  return {
    ...EMPTY_PARTS,
    ...single,
    organicAcids: composition.organicAcids,
    other: composition.other,
    ...composition.fat,
    ...composition.sugars,
    ...composition.polyols,
    unaccounted: new Decimal(100).minus(statedGrams(composition)),
  };
};

/** Splits a syrup's solids over the parts of its sheet; what the sheet lacks is left out. */
const syrupOf = (
  composition: CompositionPer100g,
  parts: Record<Part, Decimal>,
): Pick<MakeUp, 'syrups' | 'inSyrup'> => {
  const syrup = composition.glucoseSyrup;
  if (!syrup) return NOTHING;
  let left = syrup.solids;
  const inSyrup = { ...NOTHING.inSyrup };
  for (const part of SYRUP_PARTS) {
    inSyrup[part] = Decimal.min(parts[part], left);
    left = left.minus(inSyrup[part]);
  }
  const syrups = new Map([[syrup.dextroseEquivalent.toString(), syrup.solids.minus(left)]]);
  return { syrups, inSyrup };
};

const dairyAshOf = (composition: CompositionPer100g): Decimal => {
  if (composition.dairyAsh) return composition.dairyAsh;
  const { milkSolids, milkFat } = composition.cocoaSolids;
  const fatFree = Decimal.max(0, milkSolids.minus(milkFat));
  return Decimal.min(fatFree.times(ASH_OF_MILK), composition.ash.plus(composition.salt));
};

/** Grams of each part in `massG` of an ingredient; null when its composition isn't stated. */
export const makeUpOf = (composition: CompositionPer100g | null, massG: Decimal): MakeUp => {
  if (!composition) return { ...NOTHING, parts: { ...EMPTY_PARTS, unstated: massG } };
  const parts = per100g(composition);
  const { syrups, inSyrup } = syrupOf(composition, parts);
  const { fatFreeCocoa, milkSolids } = composition.cocoaSolids;
  const dairyAsh = dairyAshOf(composition);
  const freeSalt = Decimal.max(0, parts.salt.minus(dairyAsh));
  const whole = { parts, fatFreeCocoa, milkSolids, dairyAsh, freeSalt, syrups, inSyrup };
  return times(whole, massG.dividedBy(100));
};

const eachSyrupPart = (value: (part: SyrupPart) => Decimal): Record<SyrupPart, Decimal> => ({
  higherSaccharides: value('higherSaccharides'),
  maltose: value('maltose'),
  glucose: value('glucose'),
});

/** Most parts of most ingredients are none: exact arithmetic is spent on the others only. */
const added = (a: Decimal, b: Decimal): Decimal => (a.isZero() ? b : b.isZero() ? a : a.plus(b));
const scaled = (value: Decimal, factor: Decimal): Decimal =>
  value.isZero() ? value : value.times(factor);

export const plus = (a: MakeUp, b: MakeUp): MakeUp => {
  const syrups = new Map(a.syrups);
  for (const [de, grams] of b.syrups) syrups.set(de, grams.plus(syrups.get(de) ?? ZERO));
  return {
    parts: partsOf((part) => added(a.parts[part], b.parts[part])),
    fatFreeCocoa: a.fatFreeCocoa.plus(b.fatFreeCocoa),
    milkSolids: a.milkSolids.plus(b.milkSolids),
    dairyAsh: a.dairyAsh.plus(b.dairyAsh),
    freeSalt: a.freeSalt.plus(b.freeSalt),
    syrups,
    inSyrup: eachSyrupPart((part) => a.inSyrup[part].plus(b.inSyrup[part])),
  };
};

export const times = (makeUp: MakeUp, factor: Decimal): MakeUp => ({
  parts: partsOf((part) => scaled(makeUp.parts[part], factor)),
  fatFreeCocoa: makeUp.fatFreeCocoa.times(factor),
  milkSolids: makeUp.milkSolids.times(factor),
  dairyAsh: makeUp.dairyAsh.times(factor),
  freeSalt: makeUp.freeSalt.times(factor),
  syrups: new Map([...makeUp.syrups].map(([de, grams]) => [de, grams.times(factor)])),
  inSyrup: eachSyrupPart((part) => makeUp.inSyrup[part].times(factor)),
});

export const totalG = (makeUp: MakeUp): Decimal => sum(PARTS.map((part) => makeUp.parts[part]));
