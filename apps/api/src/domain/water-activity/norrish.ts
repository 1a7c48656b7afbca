import type { Solute } from './solutes';

const WATER_MOLAR_MASS = 18.0153;

/** Square root that keeps the sign: a solute with a negative K raises water activity. */
const signedRoot = (k: number): number => Math.sign(k) * Math.sqrt(Math.abs(k));

/**
 * Norrish's original form for several solutes: aw = Xw·exp(−(Σ √Ki·Xi)²). Splitting a solute in two
 * changes nothing, unlike the additive form ΣKi·Xi², which is wrong for mixtures.
 * Works in `number`; reproduces hand-computed vectors to ± 0.00005.
 */
export const norrish = (waterG: number, solutes: readonly Solute[]): number => {
  const waterMoles = waterG / WATER_MOLAR_MASS;
  let moles = waterMoles;
  let weighted = 0;
  for (const solute of solutes) {
    const n = solute.massG / solute.molarMass;
    moles += n;
    weighted += signedRoot(solute.k) * n;
  }
  if (moles <= 0) return 0;
  return (waterMoles / moles) * Math.exp(-((weighted / moles) ** 2));
};

/** The solutes with each one cut at what the water can dissolve. */
export const dissolved = (waterG: number, solutes: readonly Solute[]): Solute[] =>
  solutes.map((solute) =>
    solute.cap === null
      ? solute
      : { ...solute, massG: Math.min(solute.massG, solute.cap * waterG) },
  );
