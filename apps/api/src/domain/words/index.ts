export type { Catalogue, LabelWord, NutrientWord } from './catalogues/catalogue';
export { colonIn, figureIn, NBSP, percentIn } from './numbers';
export { allergenName, fill, wordsIn } from './words';
