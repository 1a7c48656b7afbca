import { ok, refuse, type Result } from '../refusals/result';
import { named, say, type Sentence } from '../words/say';
import type { MakingRefusal } from './refusals';

/** An allergen that the product would hold, or may hold, and by its recipe doesn't. */
export interface AllergenToAccept {
  readonly allergen: string;
  /** `contains`, `may_contain` or `unknown`, with the lot in it. */
  readonly after: string;
}

/** What a person says who has seen what changes. */
export interface Acceptance {
  readonly allergens: readonly AllergenToAccept[];
}

/** A draw of something that the recipe doesn't name, or that isn't what the tank holds. */
export interface ForeignDraw {
  readonly batchCode: string;
  readonly lotCode: string;
  readonly itemName: string;
  /** Null when the lot goes in beside all that the recipe names. */
  readonly insteadOf: string | null;
  /** Of a tank's charge. */
  readonly tankName: string | null;
  readonly worse: readonly AllergenToAccept[];
}

const sayEach = (rows: readonly AllergenToAccept[]): string =>
  rows.map((row) => say`${named(row.allergen)} (${named(row.after)})`).join(', ');

const whatIsForeign = (draw: ForeignDraw): Sentence => {
  const { batchCode, lotCode, itemName, insteadOf, tankName } = draw;
  if (insteadOf !== null) {
    return say`Lot ${lotCode} is ${itemName}, which would stand in for ${insteadOf} in batch ${batchCode}.`;
  }
  return tankName === null
    ? say`Lot ${lotCode} is ${itemName}, which the recipe of batch ${batchCode} doesn’t name.`
    : say`Lot ${lotCode} is ${itemName}, and batch ${batchCode} went into tank ${tankName}, which holds something else.`;
};

/**
 * Whoever puts something else into a batch must have seen what it changes, and names each allergen
 * that comes with it as it was shown: what has changed since was not accepted.
 */
export const checkAcceptance = (
  draw: ForeignDraw,
  acceptance: Acceptance | null,
  differences: Readonly<Record<string, unknown>>,
): Result<Acceptance, MakingRefusal> => {
  const { batchCode, lotCode, worse } = draw;
  const accepted = (row: AllergenToAccept): boolean =>
    acceptance?.allergens.some(
      ({ allergen, after }) => allergen === row.allergen && after === row.after,
    ) ?? false;
  const open = worse.filter((row) => !accepted(row));
  if (acceptance !== null && open.length === 0) return ok(acceptance);
  const changes =
    open.length === 0
      ? say`No allergen gets worse by what the specifications say.`
      : say`With it the product changes: ${sayEach(open)}. Its label must change.`;
  return refuse({
    code: 'substitute-not-accepted',
    detail: say`${whatIsForeign(draw)} ${changes} Look at the comparison, then accept what changes or take another lot.`,
    facts: { batchCode, lotCode, notAccepted: open, ...differences },
  });
};
