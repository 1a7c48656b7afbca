export type { Catalogue, LabelWord, NutrientWord } from './catalogues/catalogue';
export { figureIn, NBSP, percentIn } from './numbers';
export { fill, wordsIn } from './words';
