import type { Wording } from './wording';

export const batches: Wording = {
  'Not signed in': 'Non identifié',
  'Sign in and try again.': 'Identifiez-vous et réessayez.',
  'Sign in and try again. A session ends after twelve hours or when someone ends it.':
    'Identifiez-vous et réessayez. Une session finit après douze heures ou quand quelqu’un la ferme.',
  'Not allowed for your role': 'Pas permis à votre rôle',
  'You are signed in as {0} ({1}). This needs: {2}. Ask the owner.':
    'Vous êtes identifié comme {0} ({1}). Cela demande : {2}. Adressez-vous au propriétaire.',
  nobody: 'personne',
  'This link is not valid': 'Ce lien n’est pas valable',
  'The link was used already, has expired, or there is an owner. Start the service again on an empty database for a new link.':
    'Le lien a déjà servi, a expiré, ou il y a un propriétaire. Redémarrez le service sur une base vide pour un nouveau lien.',
  'Name or password is wrong': 'Le nom ou le mot de passe est faux',
  'Check the name and the password. After too many tries wait a minute.':
    'Vérifiez le nom et le mot de passe. Après trop d’essais, attendez une minute.',
  user: 'utilisateur',
  'There is a user "{0}" already. Choose another name.':
    'Il existe déjà un utilisateur « {0} ». Choisissez un autre nom.',
  '{0} is the only owner. Make someone else an owner first.':
    '{0} est le seul propriétaire. Nommez d’abord un autre propriétaire.',
  'Of batch {0} more was booked as lost than is left when this goes back: {1} g. Put less back; what was lost can’t return to its lot.':
    'De la fabrication {0}, plus a été enregistré comme perdu qu’il ne reste après ce retour : {1} g. Remettez-en moins ; ce qui a été perdu ne peut pas retourner à son lot.',
  batch: 'fabrication',
  'You are signed in as {0} (seller). This needs: owner or maker. Ask the owner.':
    'Vous êtes identifié comme {0} (vente). Cela demande : propriétaire ou fabrication. Adressez-vous au propriétaire.',
  'Batch {0} is {1}. Book into an open batch; put a finished one right with a correction.':
    'État de la fabrication {0} : {1}. Enregistrez dans une fabrication ouverte ; corrigez une fabrication terminée par une correction.',
  'Batch {0} is not a casting. Moulds are booked where pieces are cast.':
    'La fabrication {0} n’est pas un moulage. Les moules s’enregistrent là où l’on moule des pièces.',
  loss: 'perte',
  'Correction of batch {0}: {1}': 'Correction de la fabrication {0} : {1}',
  'Batch {0} is {1}; corrections are for finished ones. In an open batch put the draw back and draw again.':
    'État de la fabrication {0} : {1} ; les corrections sont pour les fabrications terminées. Dans une fabrication ouverte, remettez le prélèvement et prélevez de nouveau.',
  'Lot {0} was made with what batch {1} gave, so it can’t have gone into it. Look at the code on the tag again.':
    'Le lot {0} a été fait avec ce que la fabrication {1} a donné ; il ne peut donc pas y être entré. Regardez de nouveau le code de l’étiquette.',
  'loss of this batch': 'perte de cette fabrication',
  'This loss of {0} g was taken back already.': 'Cette perte de {0} g a déjà été annulée.',
  'This batch makes {0}. Book anything else that came out of it as rework.':
    'Cette fabrication fait {0}. Enregistrez comme réemploi tout ce qui en est sorti d’autre.',
  item: 'article',
  'Give a loss either in grams or as a number of pieces.':
    'Donnez une perte soit en grammes, soit en nombre de pièces.',
  '{0} is kept by weight: give the loss in grams.':
    '{0} est tenu au poids : donnez la perte en grammes.',
  'lot drawn into this batch': 'lot prélevé dans cette fabrication',
  'Name the lot by its code, or the tank that it is drawn from: one of the two.':
    'Nommez le lot par son code, ou la cuve dont il est prélevé : l’un des deux.',
  tank: 'cuve',
  'Tank {0} is empty. Charge it first, then draw from it.':
    'La cuve {0} est vide. Rechargez-la d’abord, puis prélevez.',
  '{0} (lot {1}) is not in the recipe of batch {2}. Take a lot of what the recipe names, or state its role and why it is used instead.':
    '{0} (lot {1}) n’est pas dans la recette de la fabrication {2}. Prenez un lot de ce que la recette nomme, ou indiquez son rôle et pourquoi il est utilisé à la place.',
  'draw of this batch': 'prélèvement de cette fabrication',
  'This draw of lot {0} was put back already. Nothing more to put right.':
    'Ce prélèvement du lot {0} a déjà été remis. Il n’y a plus rien à corriger.',
  'Nothing was drawn into batch {0}. Book what went in, then finish it.':
    'Rien n’a été prélevé dans la fabrication {0}. Enregistrez ce qui y est entré, puis terminez-la.',
  'In batch {0} a piece changed its lot on the way. Split it into runs of {1} boxes, so that a recall takes fewer of them; or finish it and say that they stay together.':
    'Dans la fabrication {0}, une pièce a changé de lot en route. Séparez-la en séries de {1} boîtes, pour qu’un rappel en prenne moins ; ou terminez-la en disant qu’elles restent ensemble.',
  'made with lot {0} ({1}), on hold: {2}': 'fait avec le lot {0} ({1}), bloqué : {2}',
  'Batch {0} charged a tank; it is finished with the charge itself.':
    'La fabrication {0} a rechargé une cuve ; elle se termine avec la recharge elle-même.',
  'recipe version': 'version de recette',
  mould: 'moule',
  'recipe for this item': 'recette de cet article',
  '{0} is {1}: it is not made in a batch.':
    '{0} est de la sorte « {1} » : cela ne se fait pas dans une fabrication.',
  '{0} at least': '{0} au moins',
  '{0} at most': '{0} au plus',
  'item of batch': 'article de la fabrication',
  'Batch {0} packs nothing: only boxes are split at a change of pieces.':
    'La fabrication {0} n’emballe rien : seules les boîtes se séparent à un changement de pièces.',
  'split of {0} boxes into {1} runs': '{0} boîtes séparées en {1} séries',
  'What was strained out stays an ancestor of the product, with its allergens. Book the top-up as a draw of its own: it is usually another lot. Without weighing, the composition is assumed.':
    'Ce qui a été filtré reste un ancêtre du produit, avec ses allergènes. Enregistrez l’appoint comme un prélèvement à part : c’est souvent un autre lot. Sans pesée, la composition est supposée.',
  'There is nothing to strain out: the solids weigh more than nought.':
    'Il n’y a rien à filtrer : les solides pèsent plus que zéro.',
  'Liquid only gets less from the pot to the sieve. Check the three weights.':
    'De la casserole au tamis, le liquide ne fait que diminuer. Vérifiez les trois poids.',
  'Say why {0} goes in, which the recipe doesn’t name.':
    'Dites pourquoi {0} entre, que la recette ne nomme pas.',
  'Lot {0} is {1}, which the recipe of batch {2} doesn’t name.':
    'Le lot {0} est du produit {1}, que la recette de la fabrication {2} ne nomme pas.',
  'Lot {0} is {1}, and batch {2} went into tank {3}, which holds something else.':
    'Le lot {0} est du produit {1}, et la fabrication {2} est allée dans la cuve {3}, qui contient autre chose.',
  'Lot {0} is {1}, which would stand in for {2} in batch {3}.':
    'Le lot {0} est du produit {1}, qui remplacerait {2} dans la fabrication {3}.',
  'No allergen gets worse by what the specifications say.':
    'Aucun allergène ne s’aggrave d’après les fiches techniques.',
  'With it the product changes: {0}. Its label must change.':
    'Avec lui le produit change : {0}. Son étiquette doit changer.',
  '{0} {1} Look at the comparison, then accept what changes or take another lot.':
    '{0} {1} Regardez la comparaison, puis acceptez ce qui change ou prenez un autre lot.',
  'No figures: {0}': 'Pas de chiffres : {0}',
  'The recipe of {0} has no such component, so there is nothing to replace.':
    'La recette de {0} n’a pas un tel composant ; il n’y a donc rien à remplacer.',
  'Lot {0} is in tank {1} already; its rest goes in as the heel.':
    'Le lot {0} est déjà dans la cuve {1} ; son reste y entre comme fond de cuve.',
  'Tank {0} is out of use. Put it back into use first.':
    'La cuve {0} est hors service. Remettez-la d’abord en service.',
  'output of batch': 'lot issu de la fabrication',
  'lot of batch': 'lot de la fabrication',
  'Tank {0} isn’t empty. Empty it first.': 'La cuve {0} n’est pas vide. Videz-la d’abord.',
  'the maker of this chocolate': 'le fabricant de ce chocolat',
  'Humidity is between 1 and 100 per cent.': 'L’humidité est entre 1 et 100 pour cent.',
  'The dew point is reckoned for rooms between −40 and 50 °C.':
    'Le point de rosée se calcule pour des pièces entre −40 et 50 °C.',
  'tempering curve of': 'courbe de tempérage de',
  'State at least the windows for melting and for working, or none of them.':
    'Indiquez au moins les plages de fonte et de travail, ou aucune.',
  'A window goes from its lower to its higher temperature, up to 100 °C.':
    'Une plage va de sa température basse à sa température haute, jusqu’à 100 °C.',
  'Name the lots that are wrong and book what came out instead of them; both, in one correction.':
    'Nommez les lots qui sont faux et enregistrez ce qui est sorti à leur place ; les deux, dans une seule rectification.',
  'Lot {0} was taken back already. Nothing more to put right.':
    'Le lot {0} a déjà été repris. Rien de plus à rectifier.',
  'Some of lot {0} was used, sent or counted already, so it did come out. Reverse that first, or count the lot as it is now.':
    'Une partie du lot {0} a déjà été utilisée, expédiée ou comptée : il est donc bien sorti. Annulez d’abord cela, ou comptez le lot tel qu’il est.',
  'Batch {0} is itself a part of a making. Open the new part at its head.':
    'La fabrication {0} est elle-même une partie d’un ensemble. Ouvrez la nouvelle partie depuis la première.',
  'Batch {0} is neither cooked nor cast, and only that is made in parts. Open another batch instead.':
    'La fabrication {0} n’est ni une cuisson ni un moulage ; seuls ceux-ci se font en parties. Ouvrez plutôt une autre fabrication.',
  'Batch {0} packs boxes, and its parts are the boxes from where a lot of pieces changes. Split it there, or open another batch.':
    'La fabrication {0} emballe des boîtes ; ses parties sont les boîtes à partir d’un changement de lot de pièces. Séparez-la à cet endroit, ou ouvrez une autre fabrication.',
  'Of what was planned {0} is left to share out, and batch {1} keeps some of it. Plan less than that for the part.':
    'De ce qui était prévu, il reste {0} à répartir, et la fabrication {1} en garde une part. Prévoyez moins que cela pour la partie.',
  'as lot {0}: {1}': 'comme lot {0} : {1}',
  'This reading is marked as wrong already.': 'Ce relevé est déjà marqué comme faux.',
  'This use of mould {0} was taken back already.':
    'Cette utilisation du moule {0} a déjà été reprise.',
  'mould use': 'utilisation de moule',
};
