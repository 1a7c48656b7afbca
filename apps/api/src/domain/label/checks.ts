import { Temporal } from 'temporal-polyfill';
import {
  chocolateFigures,
  nameFindings,
  statesCocoaSolids,
  vegetableFatFindings,
  vegetableFats,
} from '../chocolate-law';
import { finding, type Declaration, type WrittenList } from '../declaration';
import { colouredChocolate, liquoriceFacts, liquoriceFindings } from '../statements';
import type { Language } from '../specification';
import type { LabelAsk } from './ask';
import type { LabelFinding } from './content';

/** What must be right before a label of a market is drawn, beside the ingredients themselves. */
export const labelChecks = (ask: LabelAsk): LabelFinding[] => [
  ...languageFindings(ask),
  ...operatorFindings(ask),
  ...dateFindings(ask),
  ...chocolateFindings(ask),
  ...liquoriceFindings(liquoriceFacts(ask.mix), ask.market),
  ...packFindings(ask),
];

const languageFindings = ({ market, languages, settings }: LabelAsk): LabelFinding[] => {
  const asked = market.language;
  const lacks = languages.length === 0 || (asked !== null && !languages.includes(asked));
  const nameless = languages.filter((language) => !settings.names[language]);
  return [
    ...(lacks
      ? [
          finding(
            'refusal',
            'language-missing',
            `A label for ${market.code} must speak ${asked ?? 'at least one language'}.`,
          ),
        ]
      : []),
    ...nameless.map((language) =>
      finding('refusal', 'name-missing', `The product has no name in ${language}.`, { language }),
    ),
  ];
};

const operatorFindings = ({ operator, market }: LabelAsk): LabelFinding[] =>
  operator.name.trim() !== '' && operator.addressLines.some((line) => line.trim() !== '')
    ? []
    : [
        finding(
          'refusal',
          'operator-missing',
          `The label needs the workshop’s name and an address in ${market.operatorIn}.`,
        ),
      ];

const dateFindings = (ask: LabelAsk): LabelFinding[] => {
  const findings: LabelFinding[] = [];
  const passed = Temporal.PlainDate.compare(ask.last, ask.today) < 0;
  if (Temporal.PlainDate.compare(ask.last, ask.madeOn) < 0) {
    const detail = 'The date on the label lies before the day of making.';
    findings.push(finding('refusal', 'date-before-making', detail));
  }
  if (passed) {
    const useBy = ask.dateKind === 'use_by';
    const detail = useBy
      ? 'The use-by date has passed: this food may not be sold.'
      : 'The best-before date has passed.';
    findings.push(finding(useBy ? 'refusal' : 'decision', 'date-passed', detail));
  }
  const unstored = ask.languages.filter((language) => !ask.settings.storage[language]);
  if (ask.dateKind === 'use_by' && unstored.length > 0) {
    const detail = `A use-by date needs the storage conditions in ${unstored.join(', ')}.`;
    findings.push(finding('refusal', 'storage-missing', detail, { languages: unstored }));
  }
  return findings;
};

const chocolateFindings = (ask: LabelAsk): LabelFinding[] => {
  const { legalName } = ask.settings;
  if (ask.market.chocolate === 'cfr_163') return americanChocolate(ask);
  const needsSolids = legalName.kind === 'chocolate' && statesCocoaSolids(legalName.chocolate);
  const unknown = needsSolids && chocolateFigures(ask.mix) === null;
  return [
    ...nameFindings(legalName, ask.mix, ask.shellG),
    ...vegetableFatFindings(ask.mix),
    ...colouredChocolate(ask.mix, ask.market),
    ...(unknown
      ? [
          finding(
            'refusal',
            'cocoa-solids-unknown',
            'Cocoa solids must be stated, but the composition of the chocolate isn’t known.',
          ),
        ]
      : []),
  ];
};

/** 21 CFR 163 (from memory) has no allowance for vegetable fats beside cocoa butter. */
const americanChocolate = ({ settings, mix }: LabelAsk): LabelFinding[] => {
  const { percent } = vegetableFats(mix);
  if (settings.legalName.kind !== 'chocolate' || percent.isZero()) return [];
  const detail =
    'Chocolate with vegetable fats beside cocoa butter is no chocolate in this market.';
  return [finding('refusal', 'name-not-allowed', detail)];
};

const packFindings = ({ settings }: LabelAsk): LabelFinding[] => {
  const { netG, form, count } = settings.pack;
  const findings: LabelFinding[] = [];
  if (!netG.greaterThan(0)) {
    const detail = 'The pack has no net quantity. Enter its nominal weight.';
    findings.push(finding('refusal', 'no-net-quantity', detail));
  }
  if (form !== 'loose' && (count === null || count < 1)) {
    const detail = 'This kind of pack states a number of pieces, and none is set.';
    findings.push(finding('refusal', 'no-count', detail));
  }
  return findings;
};

/** What a written list lacks: names in its language, or an allergen that got lost on the way. */
export const listFindings = (
  list: WrittenList,
  declaration: Declaration,
  language: Language,
): LabelFinding[] => {
  const lost = declaration.allergens.filter((allergen) => !list.shown.has(allergen));
  return [
    ...list.nameless.map((name) =>
      finding('refusal', 'ingredient-nameless', `${name} has no name in ${language}.`, {
        ingredient: name,
        language,
      }),
    ),
    ...(lost.length === 0
      ? []
      : [
          finding(
            'refusal',
            'allergen-lost',
            `The list doesn’t show ${lost.join(', ')}, which the product contains.`,
            { allergens: lost },
          ),
        ]),
  ];
};
