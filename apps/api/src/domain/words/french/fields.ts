import type { Wording } from './wording';

export const fields: Wording = {
  'must account for 100 g; it accounts for {0} g': 'doit totaliser 100 g ; il totalise {0} g',
  'cocoa butter must not exceed the cocoa butter among the fats':
    'le beurre de cacao ne doit pas dépasser le beurre de cacao des matières grasses',
  'milk fat must not exceed the milk solids that it is part of':
    'la matière grasse de lait ne doit pas dépasser la matière sèche de lait dont elle fait partie',
  'must not exceed {0}, of which it is a part': 'ne doit pas dépasser {0}, dont il fait partie',
  'must have a name in at least one language': 'doit avoir un nom dans au moins une langue',
  'must be an E number such as "E322"': 'doit être un numéro E, comme « E322 »',
  'percentages must not exceed 100; they sum to {0}':
    'les pourcentages ne doivent pas dépasser 100 ; leur somme est {0}',
  'must not be an ingredient of itself': 'ne doit pas être un ingrédient de lui-même',
  'must not nest deeper than {0} levels': 'ne doit pas avoir plus de {0} niveaux',
  'must not be given for the ingredient itself':
    'ne doit pas être donné pour l’ingrédient lui-même',
  'must be "contains": an ingredient comes from it':
    'doit être « contains » : un ingrédient en provient',
  'is "contains", so the ingredient that it is in must name it as its origin':
    'est « contains » ; l’ingrédient qui l’apporte doit donc le nommer comme origine',
  'must be an object': 'doit être un objet',
  'is unknown': 'est inconnu',
  'must be a list': 'doit être une liste',
  'must have at most {0} entries': 'doit avoir au plus {0} entrées',
  'must be a text': 'doit être un texte',
  'must be true or false': 'doit être true ou false',
  'must be a decimal text such as "12.5", not negative':
    'doit être un texte décimal comme « 12.5 », non négatif',
  'must be at most {0}': 'doit être au plus {0}',
  'must be one of {0}': 'doit être l’un de {0}',
  'must not be empty': 'ne doit pas être vide',
  'must have at most {0} characters': 'doit avoir au plus {0} caractères',
  'must not hold control or direction characters':
    'ne doit pas contenir de caractères de commande ou de direction',
  'must be written from left to right': 'doit s’écrire de gauche à droite',
  '{0} or {1}': '{0} ou {1}',
  '{0} and {1}': '{0} et {1}',
};
