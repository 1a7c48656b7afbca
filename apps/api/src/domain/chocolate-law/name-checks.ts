import { finding, type IngoingLot, type IngoingMix } from '../declaration';
import type { LabelFinding } from '../label/content';
import type { ChocolateKind } from '../specification';
import { sum, type Decimal } from '../units';
import { saidShortfalls } from './minimum-contents';
import {
  chocolateFigures,
  chocolateG,
  chocolatePercent,
  isChocolate,
  vegetableFats,
  type LegalName,
} from './product';
import { named, say, type Sentence } from '../words/say';

const FILLED_LEAST_PERCENT = 25;
const OTHER_MATTER_MOST_PERCENT = 40;
const VEGETABLE_FAT_MOST_PERCENT = 5;

/** Checks a name against what is inside. `shellG` is the outer part, when the making recorded it. */
export const nameFindings = (
  name: LegalName,
  mix: IngoingMix,
  shellG: Decimal | null,
): LabelFinding[] => {
  switch (name.kind) {
    case 'filled_chocolate':
      return [
        ...shareFindings(say`filled chocolate`, shellG ?? chocolateG(mix), mix),
        ...(shellG === null ? [shellUnrecorded()] : []),
      ];
    case 'praline':
      return shareFindings(say`praline or “a chocolate”`, chocolateG(mix), mix);
    case 'chocolate':
      return barFindings(name.chocolate, mix);
    case 'assortment':
      return name.onlyChocolates
        ? []
        : [
            notAllowed(
              say`A box that mixes chocolates with other sweets is no chocolate assortment.`,
            ),
          ];
    case 'confectionery':
      return [];
  }
};

export const notAllowed = (detail: Sentence, facts: LabelFinding['facts'] = {}): LabelFinding =>
  finding('refusal', 'name-not-allowed', detail, facts);

/** All chocolate inside is more than the outer part; what isn't weighed is never taken as enough. */
const shellUnrecorded = (): LabelFinding =>
  finding(
    'decision',
    'shell-unrecorded',
    say`No shell was drawn as such, so the outer part isn’t known. A filled chocolate needs ${FILLED_LEAST_PERCENT} % of its weight outside: weigh it and decide.`,
  );

const shareFindings = (name: Sentence, chocolate: Decimal, mix: IngoingMix): LabelFinding[] => {
  const percent = chocolatePercent(chocolate, mix.finishedG);
  if (percent.greaterThanOrEqualTo(FILLED_LEAST_PERCENT)) return [];
  const shown = percent.toDecimalPlaces(2).toString();
  const detail = say`Chocolate is ${shown} % of the weight; the name ${name} needs ${FILLED_LEAST_PERCENT} %. Cast a thicker shell or choose another name.`;
  return [notAllowed(detail, { chocolatePercent: shown })];
};

const barFindings = (kind: ChocolateKind, mix: IngoingMix): LabelFinding[] => {
  const findings: LabelFinding[] = [];
  const figures = chocolateFigures(mix);
  if (!figures) {
    const detail = say`The composition of the chocolate isn’t stated in full, so its legal name can’t be checked.`;
    findings.push(finding('warning', 'name-unchecked', detail));
  }
  const short = figures ? saidShortfalls(kind, figures) : [];
  if (short.length > 0) findings.push(notAllowed(say`Not ${named(kind)}: ${short.join('; ')}.`));
  const others = mix.lots.filter((lot) => !isChocolate(lot));
  const otherPercent = chocolatePercent(sum(others.map((lot) => lot.massG)), mix.finishedG);
  if (!kind.includes('gianduja') && otherPercent.greaterThan(OTHER_MATTER_MOST_PERCENT)) {
    const shown = otherPercent.toDecimalPlaces(2).toString();
    findings.push(notAllowed(say`Other edible matter is ${shown} %; at most 40 % is allowed.`));
  }
  return [...findings, ...others.flatMap(barredMatter)];
};

const barredMatter = (lot: IngoingLot): LabelFinding[] => {
  const flags = lot.specification?.ingredient.flags;
  const flavour = lot.specification?.ingredient.flavouring;
  const barred = [
    ...(flags?.otherAnimalFat ? [say`animal fat that isn’t milk fat`] : []),
    ...(flags?.flourOrStarch ? [say`flour or starch`] : []),
    ...(flavour?.imitatesChocolate ? [say`a flavouring that imitates chocolate or milk fat`] : []),
  ].join(', ');
  if (barred === '') return [];
  return [
    notAllowed(say`Lot ${lot.lotCode} (${lot.itemName}) is ${barred}, barred from chocolate.`),
  ];
};

/** Vegetable fats above their limit, or of a plant that isn't allowed. */
export const vegetableFatFindings = (mix: IngoingMix): LabelFinding[] => {
  const { percent, notAllowed: plants } = vegetableFats(mix);
  const over = percent.greaterThan(VEGETABLE_FAT_MOST_PERCENT);
  return [
    ...(over
      ? [notAllowed(say`Vegetable fats are ${percent.toDecimalPlaces(2).toString()} % of the chocolate; at most 5 % is allowed.`)]
      : []),
    ...plants.map((plant) => notAllowed(say`${plant} isn’t a fat that chocolate may hold.`)),
  ];
}; // prettier-ignore
