import { CHOCOLATE_ROWS } from './chocolate-rows';
import { DAIRY_ROWS } from './dairy-rows';
import { NUT_AND_FRUIT_ROWS } from './nut-and-fruit-rows';
import { OTHER_ROWS } from './other-rows';
import { referenceIngredient, type ReferenceIngredient } from './row';
import { SWEETENER_ROWS } from './sweetener-rows';

export { compositionOf, type Figures, type ReferenceIngredient } from './row';

/** Generic compositions, so that a newcomer can try a recipe before a specification has come in. */
export const REFERENCE_INGREDIENTS: readonly ReferenceIngredient[] = [
  ...DAIRY_ROWS,
  ...CHOCOLATE_ROWS,
  ...SWEETENER_ROWS,
  ...NUT_AND_FRUIT_ROWS,
  ...OTHER_ROWS,
].map(referenceIngredient);

export const REFERENCE_CAUTION =
  'Generic figures from published tables, for trying a recipe out. A supplier’s specification always ' +
  'wins. They say nothing of allergens: those come only from the supplier.';
