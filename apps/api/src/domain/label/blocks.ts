import { precaution } from '../cross-contact';
import { labelName, listed, plain, usAllergenName, type Declaration } from '../declaration';
import {
  besideTheName,
  childrenWarning,
  liquoriceFacts,
  liquoriceStatement,
  sweetenerFacts,
  sweetenerStatements,
} from '../statements';
import type { Allergen, Language } from '../specification';
import { colonIn, fill, wordsIn } from '../words';
import type { LabelAsk } from './ask';
import { solidsTexts, vegetableFatBlocks } from './chocolate-blocks';
import type { BlockKind, TextBlock, TextRun } from './content';

const block = (
  kind: BlockKind,
  language: Language | null,
  runs: readonly TextRun[],
): TextBlock => ({ kind, language, runs });

const sentence = (kind: BlockKind, language: Language, text: string): TextBlock =>
  block(kind, language, [plain(text)]);

export const nameBlock = (ask: LabelAsk, language: Language): TextBlock => {
  const beside = besideTheName(sweetenerFacts(ask.mix), ask.market, language);
  const name = ask.settings.names[language] ?? '';
  return block('name', language, [
    { text: name, emphasis: 'strong' },
    ...(beside === null ? [] : [plain(`, ${beside}`)]),
  ]);
};

export const ingredientsBlock = (runs: readonly TextRun[], language: Language): TextBlock =>
  block('ingredients', language, [
    { text: `${wordsIn(language).label.ingredients}${colonIn(language)} `, emphasis: 'strong' },
    ...runs,
    plain('.'),
  ]);

/** "Contains" with the names of Annex II, for a pack too small for a list. */
export const containsInsteadOfList = (
  allergens: readonly Allergen[],
  language: Language,
): TextBlock[] =>
  allergens.length === 0
    ? []
    : [
        block('contains', language, [
          plain(`${wordsIn(language).label.contains} `),
          ...listed(allergens, language),
          plain('.'),
        ]),
      ];

const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** "Contains: Milk, Hazelnuts, Soy." names all of them, in the order of the act. */
export const containsLine = (declaration: Declaration): TextBlock[] => {
  const { market } = declaration.request;
  const named = market.allergens.filter(
    (allergen) => allergen !== 'sulphites' && declaration.allergens.includes(allergen),
  );
  const names = named.map((allergen) => {
    const origin = declaration.origins.find((entry) => entry.allergen === allergen);
    return capital(usAllergenName(allergen, origin?.species));
  });
  const sulphites = declaration.allergens.includes('sulphites') ? ['Contains sulfites.'] : [];
  const lines = names.length > 0 ? [`Contains: ${names.join(', ')}.`, ...sulphites] : sulphites;
  if (lines.length === 0) return [];
  return [block('contains', 'en', [{ text: lines.join(' '), emphasis: 'strong' }])];
};

export const precautionBlocks = (stated: readonly Allergen[], language: Language): TextBlock[] => {
  const runs = precaution(stated, language);
  return runs ? [block('precaution', language, runs)] : [];
};

/** Quantities above 100 % as grams for 100 g of product. */
const gramTexts = (declaration: Declaration, language: Language): string[] =>
  declaration.quidGrams.map(({ entry, grams }) =>
    fill(wordsIn(language).label.gramsPer100g, {
      g: grams.toString(),
      n: labelName(entry.node, declaration.request.market, language) ?? '?',
    }),
  );

/** Every sentence below the list, in one language. */
export const statementBlocks = (
  ask: LabelAsk,
  declaration: Declaration,
  language: Language,
): TextBlock[] => {
  const { market, mix, settings } = ask;
  const warning = childrenWarning(mix, market, language, settings.additiveForm);
  const liquorice = liquoriceStatement(liquoriceFacts(mix), market, language);
  const atmosphere = settings.protectiveAtmosphere && market.sweetenerStatements;
  const texts = [
    ...gramTexts(declaration, language),
    ...solidsTexts(ask, language),
    ...sweetenerStatements(sweetenerFacts(mix), market, language),
    ...(liquorice === null ? [] : [liquorice]),
    ...(warning === null ? [] : [warning]),
    ...(atmosphere ? [wordsIn(language).label.protectiveAtmosphere] : []),
  ];
  return [
    ...vegetableFatBlocks(ask, language),
    ...texts.map((text) => sentence('statement', language, `${text}.`)),
  ];
};

export const storageBlocks = (ask: LabelAsk, language: Language): TextBlock[] => {
  const { storage } = ask.settings;
  return storage[language] ? [sentence('storage', language, storage[language])] : [];
};

export const operatorBlock = (ask: LabelAsk): TextBlock =>
  block('operator', null, [plain([ask.operator.name, ...ask.operator.addressLines].join(', '))]);
