import type { Caution } from '../composition';
import type { BookItem, RecipeBook } from './book';
import { pieceMassG } from './mix';
import type { RecipeContent } from './recipe';
import { say } from '../words/say';

const list = (names: readonly string[]): string => names.slice(0, 5).join(', ');

/** Cautions that follow from how a recipe is written and what its ingredients' sheets say. */
export const recipeCautions = (
  content: RecipeContent,
  book: RecipeBook,
  leaves: readonly BookItem[],
): Caution[] => {
  const cautions: Caution[] = [];
  const caution = (when: boolean, code: string, text: string): void => {
    if (when) cautions.push({ code, level: 'warning', text });
  };
  const generic = leaves.filter((leaf) => leaf.isGeneric).map((leaf) => leaf.name);
  caution(
    generic.length > 0,
    'generic-composition',
    say`Generic figures stand in for ${list(generic)}: a supplier’s specification always wins.`,
  );
  const silent = leaves.filter((leaf) => leaf.allergens === null).map((leaf) => leaf.name);
  caution(
    silent.length > 0,
    'allergens-unknown',
    say`Nobody has stated the allergens of ${list(silent)}: they are unknown, not absent.`,
  );
  cautions.push({
    code: 'as-designed',
    level: 'note',
    text: say`As designed. What a lot really holds follows from the lots that were weighed into it; labels are made from those.`,
  });
  caution(
    infusionIsAssumed(content),
    'infusion-assumed',
    say`The liquid that the infusion holds back isn’t stated, so it is taken as none. Weigh before, after the boil and after straining.`,
  );
  const weightless = content.lines.filter((line) => {
    const item = book.get(line.itemId);
    return line.unit === 'pc' && item && !item.isPackaging && pieceMassG(item, book) === null;
  });
  caution(
    weightless.length > 0,
    'piece-weight-unknown',
    say`The weight of a piece in this recipe isn’t known, so it counts as nothing in every figure.`,
  );
  return cautions;
};

const infusionIsAssumed = (content: RecipeContent): boolean =>
  content.lines.some((line) => line.role === 'infusion') &&
  !content.losses.some((loss) => loss.kind === 'held_back');
