const units: Readonly<Record<string, string>> = {
  temp_c: '°C',
  humidity_percent: '%',
  brix: '°Brix',
  mass_g: 'g',
  water_activity: 'aw',
  ph: 'pH',
};

/** The unit in which a measure of the service is written. */
export const unitOfMeasure = (measure: string): string => units[measure] ?? '';
