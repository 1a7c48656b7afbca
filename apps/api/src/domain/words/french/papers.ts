import type { Wording } from './wording';

export const papers: Wording = {
  "“{0}” has signs that can't be printed here: {1}. Write it in letters of the Latin, Greek or Cyrillic alphabets.":
    '« {0} » contient des signes qui ne peuvent pas être imprimés ici : {1}. Écrivez en lettres latines, grecques ou cyrilliques.',
  'With a lower-case x of {0} mm': 'Avec un x minuscule de {0} mm',
  '{0} this label needs {1} mm of height at {2} mm of width; there are {3}.':
    '{0}, cette étiquette demande {1} mm de hauteur pour {2} mm de largeur ; il y en a {3}.',
  '{0} {1} is {2} wide and has no room on a label of {3} mm.':
    '{0}, {1} mesure {2} de large et n’a pas la place sur une étiquette de {3} mm.',
  'a label of {0} × {1} mm': 'une étiquette de {0} × {1} mm',
  'a label {0} mm wide': 'une étiquette de {0} mm de large',
  'this label without the nutrition panel, where the law lets it be left off':
    'cette étiquette sans le tableau nutritionnel, là où la loi permet de l’omettre',
  'one language less': 'une langue de moins',
  'What would fit: {0}.': 'Ce qui tiendrait : {0}.',
  'This card needs {0} mm of height at {1} mm of width; it has {2}.':
    'Cette carte demande {0} mm de hauteur pour {1} mm de largeur ; elle en a {2}.',
  'The tag of {0} needs {1} mm on this stock. Take a larger label.':
    'L’étiquette de {0} demande {1} mm sur ce support. Prenez une étiquette plus grande.',
};
