import { Decimal } from '../units';

/**
 * Dew point of room air, °C, by the Magnus form (a 17.62, b 243.12 °C; WMO Guide No. 8), ± 0.1 °C
 * between −40 and 50 °C. Crosses into `number` for the logarithm.
 */
export const dewPointC = (roomC: Decimal, humidityPercent: Decimal): Decimal => {
  const t = roomC.toNumber();
  const gamma = Math.log(humidityPercent.toNumber() / 100) + (17.62 * t) / (243.12 + t);
  return new Decimal(((243.12 * gamma) / (17.62 - gamma)).toFixed(2));
};

/** Pieces colder than the dew point draw water from the air: sugar bloom follows. */
export const condensationRisk = (
  productC: Decimal,
  roomC: Decimal,
  humidityPercent: Decimal,
): boolean => productC.lessThanOrEqualTo(dewPointC(roomC, humidityPercent));
