import type { LabelFinding } from '../label/content';
import { finding } from '../declaration';
import type { IngoingMix } from '../declaration';
import type { MarketRules } from '../market';
import type { IngredientNode, Language } from '../specification';
import { Decimal, ZERO } from '../units';
import { wordsIn } from '../words';
import { say } from '../words/say';

/** Above this share of added polyols the laxative statement is due (Annex III, point 2.4). */
const LAXATIVE_OVER_PERCENT = 10;

export interface SweetenerFacts {
  readonly sweeteners: boolean;
  readonly sugars: boolean;
  readonly aspartame: boolean;
  readonly polyolPercent: Decimal;
}

/** Walks every ingredient with its grams; what a supplier keeps back counts as the whole parent. */
const eachIngredient = (
  node: IngredientNode,
  grams: Decimal,
  visit: (node: IngredientNode, grams: Decimal) => void,
): void => {
  visit(node, grams);
  for (const part of node.parts) {
    eachIngredient(part, part.percent ? grams.times(part.percent).dividedBy(100) : grams, visit);
  }
};

/** What the mix holds of sweeteners, sugars and polyols, in the finished food. */
export const sweetenerFacts = (mix: IngoingMix): SweetenerFacts => {
  let [sweeteners, sugars, aspartame] = [false, false, false];
  let polyolG = ZERO;
  for (const lot of mix.lots) {
    if (!lot.specification) continue;
    eachIngredient(lot.specification.ingredient, lot.ingoingG, (node, grams) => {
      sweeteners ||= node.additive?.functionalClass === 'sweetener' && !node.additive.carriedOver;
      sugars ||= node.flags.sugar === true;
      aspartame ||= node.flags.aspartame === true;
      if (node.flags.polyol) polyolG = polyolG.plus(grams);
    });
  }
  const polyolPercent = mix.finishedG.greaterThan(0)
    ? polyolG.times(100).dividedBy(mix.finishedG)
    : ZERO;
  return { sweeteners, sugars, aspartame, polyolPercent };
};

/** The line beside the name: "with sweetener(s)" or "with sugar(s) and sweetener(s)", or null. */
export const besideTheName = (
  facts: SweetenerFacts,
  market: MarketRules,
  language: Language,
): string | null => {
  if (!market.sweetenerStatements || !facts.sweeteners) return null;
  const words = wordsIn(language).label;
  return facts.sugars ? words.withSugarsAndSweeteners : words.withSweeteners;
};

export const sweetenerStatements = (
  facts: SweetenerFacts,
  market: MarketRules,
  language: Language,
): string[] => {
  if (!market.sweetenerStatements) return [];
  const words = wordsIn(language).label;
  return [
    ...(facts.aspartame ? [words.phenylalanine] : []),
    ...(facts.polyolPercent.greaterThan(LAXATIVE_OVER_PERCENT) ? [words.laxative] : []),
  ];
};

/** Liquorice in confectionery: mg of glycyrrhizinic acid in a kilogram (Annex III, point 3). */
const LIQUORICE_FROM_MG_PER_KG = 100;
const LIQUORICE_WARNING_FROM_MG_PER_KG = 4000;

export interface LiquoriceFacts {
  readonly mgPerKg: Decimal;
  readonly named: boolean;
  /** Lots of liquorice whose acid isn't stated. */
  readonly unmeasured: readonly string[];
}

const holdsLiquorice = (node: IngredientNode): boolean =>
  node.flags.liquorice === true || node.parts.some(holdsLiquorice);

export const liquoriceFacts = (mix: IngoingMix): LiquoriceFacts => {
  let named = false;
  let milligrams = ZERO;
  const unmeasured: string[] = [];
  for (const { specification, ingoingG, lotCode } of mix.lots) {
    if (!specification) continue;
    const here = holdsLiquorice(specification.ingredient);
    named ||= here;
    const stated = specification.statements.glycyrrhizinicMgPerKg;
    if (stated) milligrams = milligrams.plus(stated.times(ingoingG));
    else if (here) unmeasured.push(lotCode);
  }
  const mgPerKg = mix.finishedG.greaterThan(0) ? milligrams.dividedBy(mix.finishedG) : ZERO;
  return { mgPerKg, named, unmeasured };
};

export const liquoriceStatement = (
  facts: LiquoriceFacts,
  market: MarketRules,
  language: Language,
): string | null => {
  if (!market.sweetenerStatements) return null;
  const words = wordsIn(language).label;
  if (facts.mgPerKg.greaterThanOrEqualTo(LIQUORICE_WARNING_FROM_MG_PER_KG)) {
    return words.liquoriceWarning;
  }
  // The list names liquorice already; the short statement is for what the list calls otherwise.
  const due = facts.mgPerKg.greaterThanOrEqualTo(LIQUORICE_FROM_MG_PER_KG);
  return due && !facts.named ? words.liquorice : null;
};

export const liquoriceFindings = (facts: LiquoriceFacts, market: MarketRules): LabelFinding[] =>
  facts.unmeasured.length === 0 || !market.sweetenerStatements
    ? []
    : [
        finding(
          'warning',
          'liquorice-unmeasured',
          say`The glycyrrhizinic acid of ${facts.unmeasured.join(', ')} isn’t stated. From 4 g/kg in the product a blood-pressure warning is due: ask the supplier.`,
          { lotCodes: facts.unmeasured },
        ),
      ];
