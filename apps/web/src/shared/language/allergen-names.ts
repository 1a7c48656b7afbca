import { catalogue, useWords } from './catalogue';

export const allergenMessages = catalogue('allergens', {
  wheat: ['wheat', 'blé'],
  rye: ['rye', 'seigle'],
  barley: ['barley', 'orge'],
  oats: ['oats', 'avoine'],
  milk: ['milk', 'lait'],
  egg: ['egg', 'œuf'],
  soy: ['soya', 'soja'],
  peanut: ['peanut', 'arachide'],
  almond: ['almond', 'amande'],
  hazelnut: ['hazelnut', 'noisette'],
  walnut: ['walnut', 'noix'],
  cashew: ['cashew', 'noix de cajou'],
  pecan: ['pecan', 'noix de pécan'],
  brazil_nut: ['Brazil nut', 'noix du Brésil'],
  pistachio: ['pistachio', 'pistache'],
  macadamia: ['macadamia', 'macadamia'],
  pine_nut: ['pine nut', 'pignon de pin'],
  coconut: ['coconut', 'noix de coco'],
  sesame: ['sesame', 'sésame'],
  sulphites: ['sulphites', 'sulfites'],
  lupin: ['lupin', 'lupin'],
  mustard: ['mustard', 'moutarde'],
  celery: ['celery', 'céleri'],
  crustaceans: ['crustaceans', 'crustacés'],
  fish: ['fish', 'poisson'],
  molluscs: ['molluscs', 'mollusques'],
});

export const useAllergenName = (): ((code: string) => string) => useWords(allergenMessages);
