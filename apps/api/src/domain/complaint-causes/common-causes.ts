import type { Decimal } from '../units';
import { smallestCovers } from './covers';
import { contains, type Exposure, patternsOf, tableOf } from './patterns';
import { fisherOneSided, holm, riskRatio, type RiskRatio, type TwoByTwo } from './two-by-two';

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

export interface SharedCause {
  readonly cause: string;
  /** Part of all comparable units that are with it. */
  readonly shareOfUnits: number;
}

export interface CommonCauses {
  readonly complaints: number;
  readonly units: number;
  /**
   * What all complaints share, by set logic alone: the first answer. The rarest among the comparable
   * units stands first, since what nearly every box holds says little.
   */
  readonly shared: readonly SharedCause[];
  readonly suspects: readonly SuspectedCause[];
  readonly smallestCovers: readonly (readonly string[])[];
}

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
  return {
    complaints: total('complaints'),
    units,
    shared: sharedOf(suspects),
    suspects: suspects.sort(rank),
    smallestCovers: coversOf(complained, suspects),
  };
};

const sharedOf = (suspects: readonly SuspectedCause[]): SharedCause[] =>
  suspects
    .filter((suspect) => suspect.inEveryComplaint)
    .sort((a, b) => a.shareOfUnits - b.shareOfUnits || rank(a, b))
    .flatMap(({ causes, shareOfUnits }) => causes.map((cause) => ({ cause, shareOfUnits })));

/** What every comparable unit holds explains nothing and is left out. */
const coversOf = (
  complained: readonly Exposure[],
  suspects: readonly SuspectedCause[],
): string[][] => {
  const shareOf = new Map(
    suspects.flatMap(({ causes, shareOfUnits }) =>
      causes.map((cause) => [cause, shareOfUnits] as const),
    ),
  );
  const universal = new Set(
    suspects.filter((suspect) => suspect.notDistinguishable).flatMap((suspect) => suspect.causes),
  );
  return smallestCovers(
    complained.map(({ causes }) => [...causes].filter((cause) => !universal.has(cause))),
    (cause) => shareOf.get(cause) ?? 1,
  );
};

/** What all complaints share comes first, then the rarer by chance, then the rarer among units. */
const rank = (a: SuspectedCause, b: SuspectedCause): number =>
  Number(b.inEveryComplaint) - Number(a.inEveryComplaint) ||
  a.fisherP.comparedTo(b.fisherP) ||
  a.shareOfUnits - b.shareOfUnits ||
  ((a.causes[0] ?? '') < (b.causes[0] ?? '') ? -1 : 1);
