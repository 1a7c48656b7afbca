import {
  chocolateFigures,
  isMilkKind,
  minimumPercent,
  statesCocoaSolids,
  totalCocoa,
  vegetableFats,
} from '../chocolate-law';
import type { Language } from '../specification';
import { fill, percentIn, wordsIn } from '../words';
import type { LabelAsk } from './ask';
import type { TextBlock } from './content';

/** In bold, apart from the list and at least as large (Directive 2000/36/EC, Article 2). */
export const vegetableFatBlocks = (ask: LabelAsk, language: Language): TextBlock[] => {
  const due = ask.market.chocolate === 'directive_2000_36';
  if (!due || vegetableFats(ask.mix).percent.isZero()) return [];
  const text = wordsIn(language).label.vegetableFats;
  return [{ kind: 'vegetable_fats', language, runs: [{ text, emphasis: 'strong' }] }];
};

/** "Cocoa solids: 60 % minimum", and milk solids where the market asks for them. */
export const solidsTexts = (ask: LabelAsk, language: Language): string[] => {
  const { legalName } = ask.settings;
  if (ask.market.chocolate !== 'directive_2000_36' || legalName.kind !== 'chocolate') return [];
  const figures = chocolateFigures(ask.mix);
  if (!figures) return [];
  const { cocoaSolids, milkSolids } = wordsIn(language).label;
  const line = (words: string, percent: string): string =>
    fill(words, { p: percentIn(percent, language) });
  const milk = ask.market.milkSolidsStatement && isMilkKind(legalName.chocolate);
  return [
    ...(statesCocoaSolids(legalName.chocolate)
      ? [line(cocoaSolids, minimumPercent(totalCocoa(figures)))]
      : []),
    ...(milk ? [line(milkSolids, minimumPercent(figures.milkSolids))] : []),
  ];
};
