/**
 * Published models of water activity, beside which the service's own stands in these tests. Masses
 * are grams per 100 g of water. Plain numbers: these are physics.
 */
export interface Serum {
  readonly sucrose?: number;
  readonly lactose?: number;
  readonly maltose?: number;
  readonly glucose?: number;
  readonly fructose?: number;
  readonly sorbitol?: number;
  readonly glycerol?: number;
  readonly salt?: number;
}

type Name = keyof Serum;

const MOLAR: Readonly<Record<Name, number>> = {
  sucrose: 342.3, lactose: 342.3, maltose: 342.3, glucose: 180.16, fructose: 180.16,
  sorbitol: 182.17, glycerol: 92.09, salt: 58.44,
}; // prettier-ignore

const K: Readonly<Record<Name, number>> = {
  sucrose: 6.47, lactose: 10.2, maltose: 4.54, glucose: 2.25, fructose: 2.25,
  sorbitol: 1.65, glycerol: 1.16, salt: 0,
}; // prettier-ignore

/** Grover's factors, Karel 1975 list (from memory). */
const GROVER: Readonly<Record<Name, number>> = {
  sucrose: 1, lactose: 1, maltose: 1, glucose: 1.3, fructose: 1.3, sorbitol: 2, glycerol: 4, salt: 9,
}; // prettier-ignore

const entries = (serum: Serum): [Name, number][] =>
  (Object.entries(serum) as [Name, number | undefined][]).flatMap(([name, grams]) =>
    grams === undefined || grams === 0 ? [] : [[name, grams] as [Name, number]],
  );

const particles = (name: Name): number => (name === 'salt' ? 2 : 1);
const WATER_MOLES = 100 / 18.0153;

const fractions = (serum: Serum): { water: number; solutes: [Name, number][] } => {
  const moles = entries(serum).map(
    ([name, g]) => [name, (g / MOLAR[name]) * particles(name)] as [Name, number],
  );
  const total = moles.reduce((sum, [, n]) => sum + n, WATER_MOLES);
  return { water: WATER_MOLES / total, solutes: moles.map(([name, n]) => [name, n / total]) };
};

export const raoult = (serum: Serum): number => fractions(serum).water;

/** Ferro Fontán, Chirife and Boquet 1981: aw = Xw·exp(−Xs·Σ Ki·Xi). */
export const ferroChirifeBoquet = (serum: Serum): number => {
  const { water, solutes } = fractions(serum);
  const all = solutes.reduce((sum, [, x]) => sum + x, 0);
  const weighted = solutes.reduce((sum, [name, x]) => sum + K[name] * x, 0);
  return water * Math.exp(-all * weighted);
};

/** The additive form, wrong for mixtures: a solute split in two changes the answer. */
export const additiveNorrish = (serum: Serum): number => {
  const { water, solutes } = fractions(serum);
  return water * Math.exp(-solutes.reduce((sum, [name, x]) => sum + K[name] * x * x, 0));
};

/** Ross 1975: each solute alone in all the water. */
export const ross = (serum: Serum): number =>
  entries(serum).reduce((product, [name, g]) => product * additiveNorrish({ [name]: g }), 1);

/** Grover 1947. */
export const grover = (serum: Serum): number => {
  const e = entries(serum).reduce((sum, [name, g]) => sum + (GROVER[name] * g) / 100, 0);
  return 1.04 - 0.1 * e + 0.0045 * e * e;
};

/** Money and Born 1951. */
export const moneyBorn = (serum: Serum): number => {
  const moles = entries(serum).reduce(
    (sum, [name, g]) => sum + (g / MOLAR[name]) * particles(name),
    0,
  );
  return 1 / (1 + 0.27 * moles);
};

/** Stokes and Robinson 1966 hydration model: molality of one solute at a water activity. */
const hydrationMolality = (aw: number, sites: number, k: number): number => {
  let weighted = 0;
  let total = 0;
  for (let i = 0; i <= sites; i += 1) {
    weighted += i * (k * aw) ** i;
    total += (k * aw) ** i;
  }
  return (55.508 * (1 - aw)) / (aw + (weighted / total) * (1 - aw));
};

const HYDRATION: Readonly<Partial<Record<Name, readonly [sites: number, k: number]>>> = {
  sucrose: [11, 0.994],
  glucose: [6, 0.786],
  fructose: [6, 0.786],
  glycerol: [3, 0.72],
};

/** Root of a falling function of water activity by bisection, to 1e-10. */
const bisect = (atMost: (aw: number) => boolean): number => {
  let low = 0.3;
  let high = 1;
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (atMost(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
};

/** Water activity of one solute at a molality, by its hydration model. */
export const hydration = (name: 'sucrose' | 'glucose' | 'glycerol', molality: number): number => {
  const [sites, k] = HYDRATION[name] ?? [1, 1];
  return bisect((aw) => hydrationMolality(aw, sites, k) <= molality);
};

const norrishMolality = (name: Name, aw: number): number => {
  let low = 0;
  let high = 60;
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    const n = middle * particles(name);
    const x = n / (55.508 + n);
    if ((1 - x) * Math.exp(-K[name] * x * x) > aw) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const alone = (name: Name, aw: number): number => {
  const model = HYDRATION[name];
  return model ? hydrationMolality(aw, ...model) : norrishMolality(name, aw);
};

/** Zdanovskii, Stokes and Robinson: Σ mi / mi⁰(aw) = 1. */
export const zdanovskiiStokesRobinson = (serum: Serum): number =>
  bisect((aw) => {
    const sum = entries(serum).reduce(
      (total, [name, g]) => total + (g * 10) / MOLAR[name] / alone(name, aw),
      0,
    );
    return sum >= 1;
  });

/** Robinson and Stokes osmotic coefficients of sucrose at 25 °C (from memory). */
export const sucroseReference = (m: number): number => {
  const phi = 1 + 0.07028 * m + 0.01847 * m ** 2 - 0.004045 * m ** 3 + 0.000228 * m ** 4;
  return Math.exp(-0.0180153 * m * phi);
};
