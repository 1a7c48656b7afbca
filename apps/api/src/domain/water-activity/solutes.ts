import { withoutSyrups, type MakeUp } from '../composition';
import { POLYOL_KINDS, type PolyolKind, type SugarKind } from '../specification';

/** Grams per mole of particles, and the constant K of aw = Xw·exp(−K·X²) at 25 °C. */
export interface SoluteConstants {
  readonly molarMass: number;
  readonly k: number;
  /** Dissolved at most, g per g of water; null when it never reaches its limit in a filling. */
  readonly cap: number | null;
}

export interface Solute extends SoluteConstants {
  readonly name: string;
  readonly massG: number;
}

/** Sucrose in water at 20 °C by Charles' equation (from memory): 66.6 %, 1.99 g per g. */
export const SUCROSE_CAP = 1.994;
/** Lactose beside much sucrose, condensed-milk practice (from memory); 0.216 alone at 25 °C. */
export const LACTOSE_CAP = 0.15;

/**
 * Sucrose, glucose, fructose, lactose, maltose: from memory, verified against osmotic coefficients
 * and freezing points. Other sugar counts as a disaccharide with the weaker constant: reads high.
 */
export const SUGAR_CONSTANTS: Readonly<Record<SugarKind, SoluteConstants>> = {
  sucrose: { molarMass: 342.3, k: 6.47, cap: SUCROSE_CAP },
  glucose: { molarMass: 180.16, k: 2.25, cap: null },
  fructose: { molarMass: 180.16, k: 2.25, cap: null },
  lactose: { molarMass: 342.3, k: 10.2, cap: LACTOSE_CAP },
  maltose: { molarMass: 342.3, k: 4.54, cap: null },
  otherSugar: { molarMass: 342.3, k: 4.54, cap: null },
};

/**
 * Sorbitol, xylitol, erythritol, mannitol, glycerol: table 3 of PMC2836749 (Int J Dentistry 2010).
 * Maltitol, isomalt and lactitol: molar mass known, K assumed as sorbitol's (no published figure
 * found; reads high). Hydrogenated starch has no one molar mass and is left out.
 */
export const POLYOL_CONSTANTS: Readonly<Record<PolyolKind, SoluteConstants | null>> = {
  sorbitol: { molarMass: 182.17, k: 1.65, cap: null },
  mannitol: { molarMass: 182.17, k: 0.906, cap: null },
  xylitol: { molarMass: 152.15, k: 1.66, cap: null },
  erythritol: { molarMass: 122.12, k: 1.34, cap: null },
  glycerol: { molarMass: 92.09, k: 1.16, cap: null },
  maltitol: { molarMass: 344.31, k: 1.65, cap: null },
  isomalt: { molarMass: 344.31, k: 1.65, cap: null },
  lactitol: { molarMass: 344.31, k: 1.65, cap: null },
  hydrogenatedStarch: null,
};

/** K fitted to freezing points to 30 %; the often quoted 6.17 is too strong below that. */
const CITRIC_ACID: SoluteConstants = { molarMass: 192.12, k: 1.9, cap: null };
export const ETHANOL: SoluteConstants = { molarMass: 46.07, k: 0, cap: null };
/** Two particles a molecule. Within 0.002 up to 2 mol per kg of water. */
export const SODIUM_CHLORIDE: SoluteConstants = { molarMass: 58.44 / 2, k: 0, cap: null };
/** Grams of milk minerals per mole of particles: reproduces milk's freezing point (−0.522 °C). */
export const DAIRY_ASH: SoluteConstants = { molarMass: 60, k: 0, cap: null };

/**
 * Glucose syrup solids as one solute: DE = 100·180/M, and K straight from glucose to maltose.
 * Within 0.006 of published corn-syrup sorption (Sloan & Labuza 1975) at DE 42.
 */
export const syrupConstants = (dextroseEquivalent: number): SoluteConstants => {
  const molarMass = 18016 / dextroseEquivalent;
  return { molarMass, k: 2.25 + 0.0141 * (molarMass - 180.16), cap: null };
};

/**
 * What is dissolved in the water of a mix. Fat, cocoa fibre, protein, starch and saccharides of
 * unknown length count as inert, which reads high. Crosses from exact decimals into `number`.
 */
export const solutesOf = (makeUp: MakeUp): Solute[] => {
  const sugars = withoutSyrups(makeUp);
  const solutes: Solute[] = [];
  const add = (name: string, massG: number, constants: SoluteConstants | null): void => {
    if (constants && massG > 0) solutes.push({ name, massG, ...constants });
  };
  for (const [kind, constants] of Object.entries(SUGAR_CONSTANTS)) {
    add(kind, sugars[kind as SugarKind].toNumber(), constants);
  }
  for (const kind of POLYOL_KINDS) add(kind, makeUp.parts[kind].toNumber(), POLYOL_CONSTANTS[kind]);
  for (const [de, grams] of makeUp.syrups) {
    add(`glucose syrup DE ${de}`, grams.toNumber(), syrupConstants(Number(de)));
  }
  add('organic acids', makeUp.parts.organicAcids.toNumber(), CITRIC_ACID);
  add('salt', makeUp.freeSalt.toNumber(), SODIUM_CHLORIDE);
  add('milk minerals', makeUp.dairyAsh.toNumber(), DAIRY_ASH);
  add('alcohol', makeUp.parts.alcohol.toNumber(), ETHANOL);
  return solutes;
};
