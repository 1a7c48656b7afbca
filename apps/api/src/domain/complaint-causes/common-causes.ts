import type { Decimal } from '../units';
import { smallestCovers } from './covers';
import { fisherOneSided, holm, riskRatio, type RiskRatio, type TwoByTwo } from './two-by-two';

/** Like units with the same history: the boxes of one lot that went out, for example. */
export interface Exposure {
  readonly unit: string;
  readonly complaints: number;
  readonly others: number;
  /** Everything that was, or may have been, in or at these units: lots, moulds, tanks, people. */
  readonly causes: ReadonlySet<string>;
}

export interface SuspectedCause {
  /** Causes with the very same units: the record can't tell them apart. Most specific first. */
  readonly causes: readonly string[];
  /** The last in the way of the goods among them: those that are inside none of the others. */
  readonly mostSpecific: readonly string[];
  /** Other suspects that hold all of this one's units and more. */
  readonly nestedIn: readonly string[];
  readonly table: TwoByTwo;
  /** Part of all comparable units that are with the cause. */
  readonly shareOfUnits: number;
  readonly inEveryComplaint: boolean;
  /** In every comparable unit: neither cleared nor accused by these complaints. */
  readonly notDistinguishable: boolean;
  readonly risk?: RiskRatio;
  readonly fisherP: Decimal;
  readonly holmP: Decimal;
}

export interface CommonCauses {
  readonly complaints: number;
  readonly units: number;
  /** What all complaints share, by set logic alone. The first answer; the rest only ranks. */
  readonly shared: readonly string[];
  readonly suspects: readonly SuspectedCause[];
  readonly smallestCovers: readonly (readonly string[])[];
}

interface Pattern {
  readonly causes: string[];
  readonly units: ReadonlySet<number>;
}

/** Causes grouped by the units that they are in: one pattern is one question to the data. */
const patternsOf = (exposures: readonly Exposure[]): Pattern[] => {
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

const tableOf = (exposures: readonly Exposure[], units: ReadonlySet<number>): TwoByTwo => {
  const cells = { casesWith: 0, othersWith: 0, casesWithout: 0, othersWithout: 0 };
  exposures.forEach((exposure, index) => {
    const side = units.has(index) ? 'With' : 'Without';
    cells[`cases${side}`] += exposure.complaints;
    cells[`others${side}`] += exposure.others;
  });
  return cells;
};

const contains = (larger: ReadonlySet<number>, smaller: ReadonlySet<number>): boolean =>
  larger.size > smaller.size && [...smaller].every((unit) => larger.has(unit));

/**
 * What several complaints point at. `behind` says which causes lie behind a cause (its ancestor
 * lots, its tank), so that a ganache and its own cream, which nothing in the data separates, are
 * named together with the ganache first. Few complaints prove nothing: counts stand beside each p,
 * Holm's adjustment counts each pattern once, and a unit without a complaint isn't proved faultless.
 */
export const commonCauses = (
  exposures: readonly Exposure[],
  behind: (cause: string) => ReadonlySet<string>,
): CommonCauses => {
  const complained = exposures.filter((exposure) => exposure.complaints > 0);
  const patterns = patternsOf(exposures);
  const tables = patterns.map((pattern) => tableOf(exposures, pattern.units));
  const fisherPs = tables.map(fisherOneSided);
  const holmPs = holm(fisherPs);
  const total = (field: 'complaints' | 'others'): number =>
    exposures.reduce((sum, exposure) => sum + exposure[field], 0);
  const units = total('complaints') + total('others');
  const suspects = patterns.flatMap((pattern, index): SuspectedCause[] => {
    const table = tables[index];
    const fisherP = fisherPs[index];
    const holmP = holmPs[index];
    if (!table || !fisherP || !holmP) return [];
    const risk = riskRatio(table);
    const isBehindAnother = (cause: string): boolean =>
      pattern.causes.some((other) => other !== cause && behind(other).has(cause));
    const mostSpecific = pattern.causes.filter((cause) => !isBehindAnother(cause)).sort();
    return [
      {
        causes: [...mostSpecific, ...pattern.causes.filter(isBehindAnother).sort()],
        mostSpecific,
        nestedIn: patterns
          .filter((other) => contains(other.units, pattern.units))
          .flatMap((other) => other.causes)
          .sort(),
        table,
        shareOfUnits: units === 0 ? 0 : (table.casesWith + table.othersWith) / units,
        inEveryComplaint: table.casesWithout === 0,
        notDistinguishable: table.casesWithout + table.othersWithout === 0,
        ...(risk ? { risk } : {}),
        fisherP,
        holmP,
      },
    ];
  });
  const universal = new Set(
    suspects.filter((suspect) => suspect.notDistinguishable).flatMap((suspect) => suspect.causes),
  );
  return {
    complaints: total('complaints'),
    units,
    shared: suspects
      .filter((suspect) => suspect.inEveryComplaint)
      .flatMap((suspect) => suspect.causes)
      .sort(),
    suspects: suspects.sort(rank),
    smallestCovers: smallestCovers(
      complained.map((exposure) => exposure.causes),
      (cause) => !universal.has(cause),
    ),
  };
};

/** What all complaints share comes first, then the rarer by chance, then the rarer among units. */
const rank = (a: SuspectedCause, b: SuspectedCause): number =>
  Number(b.inEveryComplaint) - Number(a.inEveryComplaint) ||
  a.fisherP.comparedTo(b.fisherP) ||
  a.shareOfUnits - b.shareOfUnits ||
  ((a.causes[0] ?? '') < (b.causes[0] ?? '') ? -1 : 1);
