import { Decimal, sum } from '../units';
import { fatMix, percentOf } from './figures';
import type { MakeUp } from './make-up';
import { totalFatG, totalPolyolsG, totalSugarsG } from './totals';
import { say } from '../words/say';

/** A short warning that stands beside a number. `level` orders them; none of them blocks. */
export interface Caution {
  readonly code: string;
  readonly level: 'note' | 'warning';
  readonly text: string;
}

/** Fat above which an emulsion is close to its geometric limit (from memory). */
const MOST_FAT_IN_EMULSION = new Decimal('0.60');
/** Milk fat in the hard fat above which the set is soft, and above which there is no snap. */
const SOFT_SET = new Decimal('0.30');
const NO_SNAP = new Decimal('0.50');
/** Regulation (EU) No 1169/2011, Annex III: above this added polyols need a warning, per cent. */
const LAXATIVE_PERCENT = new Decimal(10);

/** Cautions that follow from what a mix is made of. */
export const compositionCautions = (makeUp: MakeUp): Caution[] => {
  const { parts } = makeUp;
  const cautions: Caution[] = [];
  const caution = (when: boolean, code: string, level: Caution['level'], text: string): void => {
    if (when) cautions.push({ code, level, text });
  };
  const unstated = percentOf(parts.unstated, makeUp);
  caution(
    unstated.greaterThan(0),
    'composition-unknown',
    'warning',
    say`${unstated.toFixed(1)} % of the weight has no stated composition. Every figure below leaves it out, and none can be relied on until it is stated.`,
  );
  const fat = totalFatG(makeUp);
  const sugars = totalSugarsG(makeUp).plus(totalPolyolsG(makeUp)).plus(parts.higherSaccharides);
  const emulsion = sum([fat, parts.water, sugars]);
  caution(
    parts.water.greaterThan(0) &&
      fat.dividedBy(emulsion).greaterThan(MOST_FAT_IN_EMULSION) &&
      percentOf(parts.water, makeUp).greaterThan(5),
    'emulsion-near-limit',
    'warning',
    say`Fat is over 60 % of fat, water and dissolved solids: the emulsion may split (from memory).`,
  );
  const { milkFatRatio } = fatMix(makeUp);
  caution(
    milkFatRatio?.greaterThan(SOFT_SET) === true,
    milkFatRatio?.greaterThan(NO_SNAP) ? 'no-snap' : 'soft-set',
    'note',
    milkFatRatio?.greaterThan(NO_SNAP)
      ? say`Over half of the hard fat is milk fat: no snap (from memory).`
      : say`Over 30 % of the hard fat is milk fat: a soft set, tempering temperature falls (from memory).`,
  );
  const polyols = percentOf(totalPolyolsG(makeUp), makeUp);
  caution(
    polyols.greaterThan(LAXATIVE_PERCENT),
    'polyols-over-ten-percent',
    'warning',
    say`${polyols.toFixed(1)} % polyols: more than 10 % added polyols need “excessive consumption may produce laxative effects” on the label (Regulation (EU) No 1169/2011, Annex III).`,
  );
  return cautions;
};
