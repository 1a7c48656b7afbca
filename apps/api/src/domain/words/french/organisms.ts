import type { Wording } from './wording';

/** What grows, where its name is not Latin alone. */
export const organisms: Wording = {
  'Clostridium botulinum, non-proteolytic': 'Clostridium botulinum, non protéolytique',
  'Clostridium botulinum, proteolytic A and B': 'Clostridium botulinum, protéolytique A et B',
  'most spoilage bacteria': 'la plupart des bactéries d’altération',
  'many yeasts': 'beaucoup de levures',
  'Staphylococcus aureus, toxin': 'Staphylococcus aureus, toxine',
  'Staphylococcus aureus, growth': 'Staphylococcus aureus, croissance',
  'most moulds': 'la plupart des moisissures',
  'Aspergillus that make mycotoxins': 'Aspergillus à mycotoxines',
  'Eurotium repens, germination': 'Eurotium repens, germination',
  'moulds of dry foods (Aspergillus chevalieri, Wallemia)':
    'moisissures des aliments secs (Aspergillus chevalieri, Wallemia)',
  'yeasts of sugary foods (Zygosaccharomyces rouxii)':
    'levures des aliments sucrés (Zygosaccharomyces rouxii)',
};
