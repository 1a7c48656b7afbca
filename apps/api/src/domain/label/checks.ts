import { Temporal } from 'temporal-polyfill';
import { finding, type Declaration, type WrittenList } from '../declaration';
import { liquoriceFacts, liquoriceFindings } from '../statements';
import type { Language } from '../specification';
import type { LabelAsk } from './ask';
import { chocolateFindings } from './chocolate-checks';
import type { LabelFinding } from './content';
import { named, say } from '../words/say';

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
            say`A label for ${market.code} must speak ${asked === null ? say`at least one language` : named(asked)}.`,
          ),
        ]
      : []),
    ...nameless.map((language) =>
      finding('refusal', 'name-missing', say`The product has no name in ${named(language)}.`, {
        language,
      }),
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
          say`The label needs the workshop’s name and an address in ${named(market.operatorIn)}.`,
        ),
      ];

const dateFindings = (ask: LabelAsk): LabelFinding[] => {
  const findings: LabelFinding[] = [];
  const passed = Temporal.PlainDate.compare(ask.last, ask.today) < 0;
  if (Temporal.PlainDate.compare(ask.last, ask.madeOn) < 0) {
    const detail = say`The date on the label lies before the day of making.`;
    findings.push(finding('refusal', 'date-before-making', detail));
  }
  if (passed) {
    const useBy = ask.dateKind === 'use_by';
    const detail = useBy
      ? say`The use-by date has passed: this food may not be sold.`
      : say`The best-before date has passed.`;
    const last = ask.last.toString();
    const severity = useBy ? 'refusal' : 'decision';
    findings.push(finding(severity, 'date-passed', detail, { last }, last));
  }
  const unstored = ask.languages.filter((language) => !ask.settings.storage[language]);
  if (ask.dateKind === 'use_by' && unstored.length > 0) {
    const detail = say`A use-by date needs the storage conditions in ${unstored.map(named).join(', ')}.`;
    findings.push(finding('refusal', 'storage-missing', detail, { languages: unstored }));
  }
  return findings;
};

const packFindings = ({ settings }: LabelAsk): LabelFinding[] => {
  const { netG, form, count } = settings.pack;
  const findings: LabelFinding[] = [];
  if (!netG.greaterThan(0)) {
    const detail = say`The pack has no net quantity. Enter its nominal weight.`;
    findings.push(finding('refusal', 'no-net-quantity', detail));
  }
  if (form !== 'loose' && (count === null || count < 1)) {
    const detail = say`This kind of pack states a number of pieces, and none is set.`;
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
      finding('refusal', 'ingredient-nameless', say`${name} has no name in ${named(language)}.`, {
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
            say`The list doesn’t show ${lost.map(named).join(', ')}, which the product contains.`,
            { allergens: lost },
          ),
        ]),
  ];
};
