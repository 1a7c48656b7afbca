import {
  DAIRY_ASH,
  ETHANOL,
  norrish,
  POLYOL_CONSTANTS,
  SODIUM_CHLORIDE,
  SUGAR_CONSTANTS,
} from '@api/domain/water-activity';
import type { Solute, SoluteConstants } from '@api/domain/water-activity';
import { compositionOf, type Figures } from '@api/domain/reference-ingredients';
import { makeUpOf, type MakeUp, plus } from '@api/domain/composition';
import { Decimal } from '@api/domain/units';
import type { Serum } from './published-models';

const constantsOf = (name: string): SoluteConstants => {
  if (name === 'salt') return SODIUM_CHLORIDE;
  if (name === 'ash') return DAIRY_ASH;
  if (name === 'ethanol') return ETHANOL;
  const all: Record<string, SoluteConstants | null> = { ...SUGAR_CONSTANTS, ...POLYOL_CONSTANTS };
  const found = all[name];
  if (!found) throw new Error(`no constants for ${name}`);
  return found;
};

export const soluteOf = (name: string, massG: number): Solute => ({
  name,
  massG,
  ...constantsOf(name),
});

/** The service's model on grams per 100 g of water, nothing capped. */
export const serviceModel = (serum: Serum): number =>
  norrish(
    100,
    Object.entries(serum).map(([name, grams]) => soluteOf(name, Number(grams))),
  );

/** The service's model on one solute by per cent of weight. */
export const byWeightPercent = (name: string, percent: number): number =>
  norrish(100 - percent, [soluteOf(name, percent)]);

/** The service's model on one solute by moles per kg of water. */
export const byMolality = (name: string, molality: number, molarMass: number): number =>
  norrish(1000, [soluteOf(name, molality * molarMass)]);

/** Ingredients of the worked ganaches, per 100 g (invented recipes, compositions as stated there). */
export const WORKED: Readonly<Record<string, Figures>> = {
  cream: {
    water: 58.9,
    milkFat: 35,
    lactose: 3.1,
    protein: 2.2,
    ash: 0.5,
    dairyAsh: 0.5,
    milkSolids: 40.8,
  },
  dark60: { water: 1, cocoaButter: 38, sucrose: 39, fatFreeCocoa: 21.5, fibre: 21.5 },
  dark70: { water: 1, cocoaButter: 42, sucrose: 29, fatFreeCocoa: 27.5, fibre: 27.5 },
  syrup42: { water: 20, higherSaccharides: 80, syrupDe: 42 },
  invert: { water: 22, glucose: 39, fructose: 39 },
  sorbitol: { sorbitol: 100 },
  butter: {
    water: 16,
    milkFat: 82,
    lactose: 0.6,
    protein: 0.7,
    ash: 0.1,
    dairyAsh: 0.1,
    milkSolids: 83.4,
  },
  spirit40: { water: 66.7, alcohol: 33.3 },
};

/** Mix of worked ingredients, grams by name. */
export const mixOf = (grams: Readonly<Record<string, number>>): MakeUp =>
  Object.entries(grams)
    .map(([name, g]) => makeUpOf(compositionOf(WORKED[name] ?? {}), new Decimal(g)))
    .reduce((all, one) => plus(all, one));

export const G3 = {
  cream: 100, dark60: 150, syrup42: 20, invert: 15, sorbitol: 8, butter: 20,
} as const; // prettier-ignore
