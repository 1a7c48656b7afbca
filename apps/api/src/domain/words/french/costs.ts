import type { Wording } from './wording';

export const costs: Wording = {
  'The recipe of {0} contains {1} itself. Take it out of one of the recipes on the way.':
    'La recette de {0} contient {1} elle-même. Retirez l’article d’une des recettes en chemin.',
  "Nothing good comes out of {0}, so a cost per piece can't be stated.":
    'Rien de bon ne sort de {0} ; un coût par pièce ne peut donc pas être donné.',
  'No hourly rate for the role {0} holds on {1}. Set one under Workshop.':
    'Aucun taux horaire pour le rôle {0} n’est en vigueur le {1}. Indiquez-en un sous Atelier.',
  'lot {0}': 'lot {0}',
  'What lot {0} cost is not known, so nothing made from it can be costed. Enter its price.':
    'Le coût du lot {0} n’est pas connu ; rien de ce qui en est fait ne peut être chiffré. Saisissez son prix.',
  'Step “{0}” loses all that goes into it. Give 0 to under 100 %.':
    'L’étape « {0} » perd tout ce qui y entre. Indiquez de 0 à moins de 100 %.',
  '{0} has neither a recipe nor a purchase price. A missing price is not free: enter one.':
    '{0} n’a ni recette ni prix d’achat. Un prix manquant n’est pas gratuit : saisissez-en un.',
};
