import type { Wording } from './wording';

export const making: Wording = {
  'Batch {0}: {1} went in, {2} came out and {3} was lost':
    'Fabrication {0} : {1} sont entrés, {2} sont sortis et {3} ont été perdus',
  '{0}, so {1} is missing. Weigh again, or book where it went: steam, scrapings, held back, rejects or samples.':
    '{0} ; il manque donc {1}. Pesez de nouveau, ou enregistrez où c’est allé : évaporation, raclures, retenu, rebuts ou échantillons.',
  '{0}: {1} more out than in. Look for a draw that was forgotten; if the scale or a rounding is to blame, give that as the reason.':
    '{0} : {1} de plus sorti qu’entré. Cherchez un prélèvement oublié ; si la balance ou un arrondi est en cause, donnez-le comme raison.',
  'Several kinds of pieces came out and nothing says what {0} weighs. Weigh each kind, or state the nominal weight of the item.':
    'Plusieurs sortes de pièces sont sorties et rien ne dit combien pèse {0}. Pesez chaque sorte, ou indiquez le poids nominal de l’article.',
  'Nothing good came out of batch {0}. Abandon it, with the reason.':
    'Rien de bon n’est sorti de la fabrication {0}. Abandonnez-la, avec la raison.',
  'Tank {0} holds {1}; lot {2} is {3}. Empty and clean the tank first, or book the lot as rework if that is what it is.':
    'La cuve {0} contient {1} ; le lot {2} est {3}. Videz et nettoyez d’abord la cuve, ou enregistrez le lot comme réemploi si c’en est.',
  'Tank {0} holds {1} g; with the heel this makes {2} g, {3} g too much. Put in less.':
    'La cuve {0} contient {1} g ; avec le fond de cuve cela fait {2} g, soit {3} g de trop. Mettez-en moins.',
  'Mould {0} is {1}. Take another; an inspection can clear it.':
    'État du moule {0} : {1}. Prenez-en un autre ; un contrôle peut le libérer.',
  'Mould {0} is in use in open batch {1}. Finish that first.':
    'Le moule {0} sert dans la fabrication ouverte {1}. Terminez-la d’abord.',
  'Mould {0} is a {1}; this recipe is cast in another shape.':
    'Le moule {0} est du modèle {1} ; cette recette se moule dans une autre forme.',
  'Mould {0} has cavities 1 to {1}. Count and number them again.':
    'Le moule {0} a les empreintes 1 à {1}. Comptez-les et numérotez-les de nouveau.',
  'A cavity of mould {0} is named twice, or more are rejected than were filled.':
    'Une empreinte du moule {0} est nommée deux fois, ou plus de pièces sont rebutées qu’il n’en a été rempli.',
  'These measures leave no room for a filling: the wall and the gap for the cap are thicker than the cavity. Check that every measure is in millimetres.':
    'Ces mesures ne laissent pas de place à un intérieur : la paroi et l’espace de la fermeture sont plus épais que l’empreinte. Vérifiez que chaque mesure est en millimètres.',
  'Chocolate is {0} % of the total weight; a filled chocolate needs at least 25 %.':
    'Le chocolat fait {0} % du poids total ; un chocolat fourré en demande au moins 25 %.',
  'Chocolate is only {0} % of the total weight; under 25 % the piece may not be sold as a filled chocolate. Make the shell thicker or take another sale name.':
    'Le chocolat ne fait que {0} % du poids total ; au-dessous de 25 %, la pièce ne doit pas être vendue comme chocolat fourré. Faites la coque plus épaisse ou prenez une autre dénomination de vente.',
  'Computed from stated or weighed parts (Directive 2000/36/EC, Annex I). Confirm with weighings of ten; the local authority decides on names.':
    'Calculé d’après des parts indiquées ou pesées (directive 2000/36/CE, annexe I). Confirmez par des pesées de dix pièces ; l’autorité locale décide des dénominations.',
  'Give at least two weighings, each above zero grams. Ten make a good mean.':
    'Donnez au moins deux pesées, chacune au-dessus de zéro gramme. Dix font une bonne moyenne.',
  'Filled pieces weigh less than empty ones, or capped less than filled. Weigh again.':
    'Les pièces garnies pèsent moins que les vides, ou les fermées moins que les garnies. Pesez de nouveau.',
  'Batch {0} lost more than was drawn into it. Correct its draws or its losses.':
    'La fabrication {0} a perdu plus que ce qui y a été prélevé. Corrigez ses prélèvements ou ses pertes.',
  'Batch {0} lost or gave back more of lot {1} than was drawn. Correct the draws or the losses of that lot.':
    'La fabrication {0} a perdu ou rendu du lot {1} plus que ce qui en a été prélevé. Corrigez les prélèvements ou les pertes de ce lot.',
  'Lot {0} is recorded as made by two batches. A lot has one origin.':
    'Le lot {0} est noté comme issu de deux fabrications. Un lot a une seule origine.',
  'Lot {0} would be inside itself (through {1}). Rework makes a new lot.':
    'Le lot {0} serait contenu en lui-même (par {1}). Un réemploi fait un nouveau lot.',
  'More was used than had been received. Look for a delivery that was not booked.':
    'On a utilisé plus que ce qui avait été reçu. Cherchez une livraison non enregistrée.',
  "Lot {0} can't be counted as less than nought.":
    'Le lot {0} ne peut pas être compté au-dessous de zéro.',
  'A quantity of {0} must be more than nought.': 'Une quantité de {0} doit être supérieure à zéro.',
  'Give a whole number of {0}: it is kept by the piece.':
    'Donnez un nombre entier de {0} : l’article est tenu à la pièce.',
  'Only {0} of lot {1} left, but {2} asked for. Take less, take the rest from another lot, or count the lot if there is more on the shelf.':
    'Il ne reste que {0} du lot {1}, mais {2} sont demandés. Prenez-en moins, prenez le reste d’un autre lot, ou comptez le lot s’il y en a davantage en rayon.',
  'Lot {0} ({1}) {2}. {3}': 'Le lot {0} ({1}) {2}. {3}',
  'was refused on arrival': 'a été refusé à l’arrivée',
  'Send it back; take another lot.': 'Renvoyez-le ; prenez un autre lot.',
  'has no approved specification': 'n’a pas de fiche technique approuvée',
  'Enter what the supplier states of it and approve that, or take another lot.':
    'Saisissez ce que le fournisseur en dit et approuvez-le, ou prenez un autre lot.',
  'is on hold: {0}': 'est bloqué : {0}',
  'Take another lot, or have the hold released by someone who may.':
    'Prenez un autre lot, ou faites lever le blocage par quelqu’un qui en a le droit.',
  'is past its use-by date {0}': 'a dépassé sa date limite de consommation du {0}',
  'Throw it away and book it as wasted; take another lot.':
    'Jetez-le et enregistrez-le comme jeté ; prenez un autre lot.',
};
