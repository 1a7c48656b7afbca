import { finding, plain, type Declaration } from '../declaration';
import type { Language, LocalText } from '../specification';
import type { LabelAsk } from './ask';
import type { LabelFinding, TextBlock } from './content';
import { named, say } from '../words/say';

/**
 * Where the primary ingredient comes from, once an origin of the food is given: by words, but also by
 * a flag or a picture (Implementing Regulation (EU) 2018/775).
 */
export interface PrimaryOrigin {
  readonly state: 'unset' | 'same' | 'differs';
  /** As "The cocoa comes from Ghana", or that it doesn't come from the place that is given. */
  readonly text: LocalText | null;
}

/** More than this share makes an ingredient primary (Regulation (EU) No 1169/2011, Article 2(2)(q)). */
const PRIMARY_OVER_PERCENT = 50;

/** Ingredients over half of the food, for the person who must say where they come from. */
const primaryIngredients = ({ places, request }: Declaration): string[] => {
  const half = request.mix.finishedG.times(PRIMARY_OVER_PERCENT).dividedBy(100);
  return places
    .filter(({ rankG }) => rankG.greaterThan(half))
    .map(({ entry }) => Object.values(entry.node.names)[0] ?? '?');
};

/** An origin that is given must not be taken for that of the primary ingredient. */
export const originFindings = (ask: LabelAsk, declaration: Declaration): LabelFinding[] => {
  const { origin, primaryOrigin } = ask.settings;
  if (!ask.market.originOfPrimary || !origin) return [];
  const names = primaryIngredients(declaration);
  const primary =
    names.length > 0
      ? say`${names.join(', ')} (over ${PRIMARY_OVER_PERCENT} %)`
      : say`the ingredient that the name makes people think of`;
  if (primaryOrigin.state === 'unset') {
    const detail = say`The label gives an origin. Say whether the primary ingredient comes from there too: ${primary}. If it doesn’t, its origin must be stated beside (Regulation (EU) 2018/775).`;
    return [finding('refusal', 'primary-origin-unset', detail, { ingredients: names })];
  }
  const mute = ask.languages.filter((language) => !primaryOrigin.text?.[language]);
  if (primaryOrigin.state === 'differs' && mute.length > 0) {
    const detail = say`The primary ingredient, ${primary}, comes from elsewhere; the sentence that says so is missing in ${mute.map(named).join(', ')}.`;
    return [finding('refusal', 'primary-origin-missing', detail, { languages: mute })];
  }
  return [];
};

/** Both in one paragraph and one size: in one field of vision, and never under 75 % (Article 3). */
export const originBlocks = (ask: LabelAsk, language: Language): TextBlock[] => {
  const { origin, primaryOrigin } = ask.settings;
  const claim = origin?.[language];
  if (!claim) return [];
  const differs = ask.market.originOfPrimary && primaryOrigin.state === 'differs';
  const primary = differs ? primaryOrigin.text?.[language] : undefined;
  const text = primary === undefined ? claim : `${claim}. ${primary}`;
  return [{ kind: 'origin', language, runs: [plain(text)] }];
};
