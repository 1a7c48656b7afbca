import type { Wording } from './wording';

export const trade: Wording = {
  'Few complaints prove nothing, and a unit without a complaint is not proved sound. This page shows where to look first; it clears no lot and replaces no examination.':
    'Peu de réclamations ne prouvent rien, et une unité sans réclamation n’est pas prouvée saine. Cette page montre où regarder d’abord ; elle ne blanchit aucun lot et ne remplace aucun examen.',
  complaint: 'réclamation',
  'None of these complaints has a lot yet. Find the lot by its code first.':
    'Aucune de ces réclamations n’a encore de lot. Trouvez d’abord le lot par son code.',
  'boxes or pieces sent out that were made within thirty days of those complained of':
    'boîtes ou bonbons expédiés, fabriqués à moins de trente jours de ceux de la réclamation',
  'No photograph': 'Pas de photographie',
  'Send one file named "photo".': 'Envoyez un fichier nommé « photo ».',
  'Somebody’s health may be in question: advise them to see a doctor, keep the rest of the goods, and tell the food authority without delay when the product may be unsafe.':
    'La santé de quelqu’un peut être en jeu : conseillez de consulter un médecin, faites garder le reste de la marchandise, et prévenez sans délai l’autorité sanitaire si le produit peut être dangereux.',
  'Write down the outcome first: a complaint is closed with what came of it.':
    'Écrivez d’abord l’issue : une réclamation se clôt avec ce qu’elle a donné.',
  'Not a photograph': 'Pas une photographie',
  'Send a JPEG, PNG or WebP photograph. Its first bytes say what it is, not its name.':
    'Envoyez une photographie JPEG, PNG ou WebP. Ce sont ses premiers octets qui disent ce qu’elle est, pas son nom.',
  'A complaint keeps at most {0} photographs.': 'Une réclamation garde au plus {0} photographies.',
  photograph: 'photographie',
  lot: 'lot',
  customer: 'client',
  delivery: 'livraison',
  supplier: 'fournisseur',
  'The diary is read from a day to the same or a later one, {0} days at most.':
    'Le journal se lit d’un jour au même ou à un jour suivant, {0} jours au plus.',
  place: 'lieu',
  reading: 'relevé',
  'A reading is of a place or of a lot: give one of the two.':
    'Un relevé est celui d’un lieu ou d’un lot : donnez l’un des deux.',
  dispatch: 'expédition',
  'It is {0}: book a dispatch on the day on which it goes.':
    'Nous sommes le {0} : enregistrez une expédition le jour où elle part.',
  'Lot {0} is on two lines. Put it on one line with the whole quantity.':
    'Le lot {0} est sur deux lignes. Mettez-le sur une seule ligne avec toute la quantité.',
  order: 'commande',
  'Order {0} is {1}. Open it again, or send without naming it.':
    'État de la commande {0} : {1}. Rouvrez-la, ou expédiez sans la nommer.',
  'Order {0} is for somebody else. Choose its customer, or another order.':
    'La commande {0} est pour quelqu’un d’autre. Choisissez son client, ou une autre commande.',
  'everything was sent': 'tout a été expédié',
  '{0} is {1} and isn’t sold: order pieces or boxes.':
    '{0} est de la sorte « {1} » et n’est pas vendu : commandez des bonbons ou des boîtes.',
  '{0} is ordered in whole numbers from one on, not {1}.':
    '{0} se commande en nombres entiers à partir de un, pas {1}.',
  'Order {0} is {1}. Open it again to change its lines.':
    'État de la commande {0} : {1}. Rouvrez-la pour changer ses lignes.',
  '{0} was sold over the counter; a delivery note is for a customer.':
    '{0} a été vendu au comptoir ; un bon de livraison est pour un client.',
  'accepted lot of delivery': 'lot accepté de la livraison',
  'There is nothing yet to print a tag for.':
    'Il n’y a encore rien dont on puisse imprimer l’étiquette.',
  'There is nothing with the tag {0}.': 'Rien ne porte l’étiquette {0}.',
  'batch in this plan': 'fabrication de ce plan',
  '{0} of {1} is on the bench already, as batch {2}.':
    '{0} du {1} est déjà en fabrication, sous {2}.',
  reservation: 'réservation',
  'Of lot {0} only {1} {2} aren’t kept for other batches. Plan again.':
    'Du lot {0}, seulement {1} {2} ne sont pas gardés pour d’autres fabrications. Planifiez de nouveau.',
  'A season ends on or after the day it begins, and its factor is above nought.':
    'Une saison finit le jour où elle commence ou plus tard, et son facteur est supérieur à zéro.',
  plan: 'plan',
  'yet: make one first': 'pas encore : faites-en d’abord un',
  'A pack holds more than nothing.': 'Un conditionnement contient plus que rien.',
  'supply term of': 'condition d’achat de',
  'cost of lot': 'coût du lot',
  '{0} has no product class for VAT. Set it on the item.':
    '{0} n’a pas de classe de produits pour la TVA. Indiquez-la sur l’article.',
  '{0} is {1} and isn’t sold: only pieces and boxes have a price.':
    '{0} est de la sorte « {1} » et n’est pas vendu : seuls les bonbons et les boîtes ont un prix.',
  price: 'prix',
  'The margin of {0} % is under the floor of {1} %; a net price of {2} would hold it.':
    'La marge de {0} % est au-dessous du plancher de {1} % ; un prix net de {2} le tiendrait.',
  'A price ending is an amount as text, as "0.90".':
    'Une terminaison de prix est un montant en texte, comme « 0.90 ».',
  'A fraction is two whole numbers, as "1/3".':
    'Une fraction est faite de deux nombres entiers, comme « 1/3 ».',
  'A change of kind {0} needs percent or fraction.':
    'Un changement de la sorte « {0} » demande percent ou fraction.',
  'Nothing gets cheaper than free: −100 % is the end.':
    'Rien n’est moins cher que gratuit : −100 % est la fin.',
  'A change names items that aren’t here. Check the ids or the part of the name.':
    'Un changement nomme des articles qui ne sont pas ici. Vérifiez les identifiants ou la partie du nom.',
  'None of the items named has a purchase price that could change.':
    'Aucun des articles nommés n’a de prix d’achat qui puisse changer.',
  'A new price is for one item: name it and give its price.':
    'Un nouveau prix est pour un seul article : nommez-le et donnez son prix.',
  'A change of loss needs points.': 'Un changement de perte demande points.',
  'A change of VAT needs productClass and ratePercent.':
    'Un changement de TVA demande productClass et ratePercent.',
  scenario: 'scénario',
  '"{0}" is not a time zone. Use a name as Europe/Brussels or America/New_York.':
    '« {0} » n’est pas un fuseau horaire. Donnez un nom comme Europe/Brussels ou America/New_York.',
};
