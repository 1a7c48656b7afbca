import type { TwoByTwo } from './two-by-two';

/** Like units with the same history: the boxes of one lot that went out, for example. */
export interface Exposure {
  readonly unit: string;
  readonly complaints: number;
  readonly others: number;
  /** Everything that was, or may have been, in or at these units: lots, moulds, tanks, people. */
  readonly causes: ReadonlySet<string>;
}

export interface Pattern {
  readonly causes: string[];
  readonly units: ReadonlySet<number>;
}

/** Causes grouped by the units that they are in: one pattern is one question to the data. */
export const patternsOf = (exposures: readonly Exposure[]): Pattern[] => {
  const unitsOf = new Map<string, number[]>();
  exposures.forEach((exposure, index) => {
    for (const cause of exposure.causes) {
      const units = unitsOf.get(cause) ?? [];
      units.push(index);
      unitsOf.set(cause, units);
    }
  });
  const patterns = new Map<string, Pattern>();
  for (const [cause, units] of unitsOf) {
    if (!units.some((unit) => (exposures[unit]?.complaints ?? 0) > 0)) continue;
    const key = units.join();
    const pattern = patterns.get(key) ?? { causes: [], units: new Set(units) };
    pattern.causes.push(cause);
    patterns.set(key, pattern);
  }
  return [...patterns.values()];
};

export const tableOf = (exposures: readonly Exposure[], units: ReadonlySet<number>): TwoByTwo => {
  const cells = { casesWith: 0, othersWith: 0, casesWithout: 0, othersWithout: 0 };
  exposures.forEach((exposure, index) => {
    const side = units.has(index) ? 'With' : 'Without';
    cells[`cases${side}`] += exposure.complaints;
    cells[`others${side}`] += exposure.others;
  });
  return cells;
};

/** Whether one set of units holds another and more. */
export const contains = (larger: ReadonlySet<number>, smaller: ReadonlySet<number>): boolean =>
  larger.size > smaller.size && [...smaller].every((unit) => larger.has(unit));
