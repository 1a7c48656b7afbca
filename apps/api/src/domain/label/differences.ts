import { Temporal } from 'temporal-polyfill';
import { finding, type Declaration } from '../declaration';
import { Decimal, ZERO } from '../units';
import type { LabelFinding } from './content';
import { named, say } from '../words/say';

export interface Compared {
  readonly designed: Declaration;
  readonly made: Declaration;
  readonly designedLast: Temporal.PlainDate | null;
  readonly madeLast: Temporal.PlainDate;
  /** Percentage points that a line may differ by before it is named. */
  readonly toleratedPoints: Decimal;
}

/**
 * What is really inside against what the recipe says. An allergen or a longer date waits for a
 * person's decision; order, missing lines and weights are shown. (A banned additive is refused by
 * the declaration itself.)
 */
export const differences = (compared: Compared): LabelFinding[] => [
  ...allergenDifferences(compared),
  ...dateDifferences(compared),
  ...lineDifferences(compared),
  ...orderDifferences(compared),
];

const allergenDifferences = ({ designed, made }: Compared): LabelFinding[] => {
  const added = made.allergens.filter((allergen) => !designed.allergens.includes(allergen));
  const gone = designed.allergens.filter((allergen) => !made.allergens.includes(allergen));
  return [
    ...added.map((allergen) =>
      finding(
        'decision',
        'differs-allergen',
        say`${named(allergen)} is in the lots that were used, but not in the recipe as designed.`,
        { allergen },
        allergen,
      ),
    ),
    ...gone.map((allergen) =>
      finding(
        'warning',
        'differs-allergen-gone',
        say`${named(allergen)} is in the recipe as designed, but in none of the lots that were used.`,
        { allergen },
      ),
    ),
  ];
};

const dateDifferences = ({ designedLast, madeLast }: Compared): LabelFinding[] => {
  if (!designedLast || Temporal.PlainDate.compare(madeLast, designedLast) <= 0) return [];
  const detail = say`The lot’s date ${madeLast.toString()} is later than the recipe’s life allows (${designedLast.toString()}).`;
  const facts = { made: madeLast.toString(), designed: designedLast.toString() };
  return [finding('decision', 'differs-date', detail, facts, facts.made)];
};

const nameOf = (names: Readonly<Record<string, string>>): string => Object.values(names)[0] ?? '?';

/** Per cent of the finished weight by name, alike names together. */
const sharesOf = ({ places, request }: Declaration): Map<string, Decimal> => {
  const shares = new Map<string, Decimal>();
  if (!request.mix.finishedG.greaterThan(0)) return shares;
  for (const { entry, rankG } of places) {
    const name = nameOf(entry.node.names);
    const percent = rankG.times(100).dividedBy(request.mix.finishedG);
    shares.set(name, (shares.get(name) ?? ZERO).plus(percent));
  }
  return shares;
};

const lineDifferences = ({ designed, made, toleratedPoints }: Compared): LabelFinding[] => {
  const [meant, real] = [sharesOf(designed), sharesOf(made)];
  return [...new Set([...meant.keys(), ...real.keys()])].flatMap((name) => {
    const [before, after] = [meant.get(name), real.get(name)];
    if (!before) return [finding('warning', 'differs-added', say`${name} isn’t in the recipe.`)];
    if (!after)
      return [finding('warning', 'differs-missing', say`${name} of the recipe is missing.`)];
    if (after.minus(before).abs().lessThanOrEqualTo(toleratedPoints)) return [];
    const shown = (share: Decimal): string => share.toDecimalPlaces(1).toString();
    const detail = say`${name} is ${shown(after)} % instead of ${shown(before)} %.`;
    return [finding('warning', 'differs-weight', detail, { ingredient: name })];
  });
};

const orderDifferences = ({ designed, made }: Compared): LabelFinding[] => {
  const inBoth = (of: Declaration, other: Declaration): string[] => {
    const others = sharesOf(other);
    const names = of.places.map((place) => nameOf(place.entry.node.names));
    return [...new Set(names)].filter((name) => others.has(name));
  };
  const [meant, real] = [inBoth(designed, made), inBoth(made, designed)];
  if (meant.join('\n') === real.join('\n')) return [];
  const detail = say`The order is ${real.join(', ')}; the recipe has ${meant.join(', ')}.`;
  return [finding('warning', 'differs-order', detail, { made: real, designed: meant })];
};
