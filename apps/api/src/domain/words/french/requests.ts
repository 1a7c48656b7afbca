import type { Wording } from './wording';

export const requests: Wording = {
  '{0} must be an object': '{0} doit être un objet',
  '{0} must be a list': '{0} doit être une liste',
  '{0} has more than {1} entries': '{0} a plus de {1} entrées',
  '{0} needs at least {1} entry': '{0} demande au moins {1} entrée',
  '{0} must be a decimal number as text, as "12.5", with at most {1} decimals':
    '{0} doit être un nombre décimal en texte, comme « 12.5 », avec au plus {1} décimales',
  '{0} must be more than 0': '{0} doit être supérieur à 0',
  '{0} must be a day of the calendar, as 2026-11-25':
    '{0} doit être un jour du calendrier, comme 2026-11-25',
  '{0} must be an instant with its offset, as 2026-11-25T08:30:00+01:00':
    '{0} doit être un instant avec son décalage, comme 2026-11-25T08:30:00+01:00',
  '{0} must be a whole number': '{0} doit être un nombre entier',
  '{0} must not be below {1}': '{0} ne doit pas être inférieur à {1}',
  '{0} must not be above {1}': '{0} ne doit pas être supérieur à {1}',
  '{0} must be true or false': '{0} doit être true ou false',
  'each of {0} is {1} at most': 'chaque valeur de {0} est au plus {1}',
  'each of {0} is {1} at least': 'chaque valeur de {0} est au moins {1}',
  '{0} must be a list of whole numbers': '{0} doit être une liste de nombres entiers',
  '{0} needs {1} characters': '{0} demande {1} caractères',
  '{0} must not hold control characters': '{0} ne doit pas contenir de caractères de commande',
  '{0} must be a list of texts': '{0} doit être une liste de textes',
  'each of {0} has at most {1} characters': 'chaque texte de {0} a au plus {1} caractères',
  '{0} must be an id (UUID)': '{0} doit être un identifiant (UUID)',
  '{0} must be a list of ids (UUID)': '{0} doit être une liste d’identifiants (UUID)',
  '{0} must be one of: {1}': '{0} doit être l’un de : {1}',
  'each of {0} must be one of: {1}': 'chaque valeur de {0} doit être l’une de : {1}',
  'Idempotency-Key missing': 'Idempotency-Key manque',
  'Send an Idempotency-Key header of 8 to 200 printable characters, new for each booking, so that a repeated request is booked once.':
    'Envoyez un en-tête Idempotency-Key de 8 à 200 caractères imprimables, nouveau pour chaque enregistrement, afin qu’une demande répétée ne soit enregistrée qu’une fois.',
  'This was stopped before it was done. Nothing was booked.':
    'Ceci a été arrêté avant la fin. Rien n’a été enregistré.',
  'This Idempotency-Key was used for another request. Send a new key.':
    'Cette Idempotency-Key a servi à une autre demande. Envoyez une nouvelle clé.',
  'Not a page of this list': 'Pas une page de cette liste',
  'Leave "after" out to start again from the first page.':
    'Omettez « after » pour repartir de la première page.',
  'Entries are never changed': 'Les écritures ne changent jamais',
  'Only a booking changes stock': 'Seul un enregistrement change le stock',
  'It is in use and never changes': 'Utilisé, donc ne change plus',
  'This lot may not be used': 'Ce lot ne doit pas être utilisé',
  'The batch does not balance': 'Le bilan de la fabrication n’est pas juste',
  'A lot would be its own ancestor': 'Un lot serait son propre ancêtre',
  'Not possible in this state': 'Impossible dans cet état',
  'Not the exact opposite entry': 'Pas l’écriture exactement contraire',
  'An allergen is not known': 'Un allergène est inconnu',
  'Reserved for another batch': 'Réservé à une autre fabrication',
  'There is one already': 'Cela existe déjà',
  'Something with this name, code or number exists already. Choose another.':
    'Quelque chose porte déjà ce nom, ce code ou ce numéro. Choisissez-en un autre.',
  'Refers to something that is not there': 'Se réfère à quelque chose qui n’existe pas',
  'The request names something that does not exist here. Look it up and try again.':
    'La demande nomme quelque chose qui n’existe pas ici. Cherchez-le et réessayez.',
  'Against a rule': 'Contraire à une règle',
  'A value is outside what the workshop allows. Check quantities, dates and kinds.':
    'Une valeur est hors de ce que l’atelier permet. Vérifiez les quantités, les dates et les sortes.',
  'Number too large': 'Nombre trop grand',
  'A quantity or an amount is larger than the books can hold.':
    'Une quantité ou un montant dépasse ce que les livres peuvent contenir.',
  'Someone else was quicker': 'Quelqu’un d’autre a été plus rapide',
  'Other bookings touched the same lots again and again. Nothing was booked; try again.':
    'D’autres enregistrements ont touché sans cesse les mêmes lots. Rien n’a été enregistré ; réessayez.',
  'There is not enough left of this lot. Look at what is on hand and take less, or another lot.':
    'Il ne reste pas assez de ce lot. Regardez ce qui est en stock et prenez-en moins, ou un autre lot.',
  'The database does not answer': 'La base de données ne répond pas',
  'The database does not answer at the moment. It is not known whether this was booked: send it again under the same Idempotency-Key, and it is booked once.':
    'La base de données ne répond pas pour le moment. On ne sait pas si cela a été enregistré : envoyez-le de nouveau sous la même Idempotency-Key, et ce ne sera enregistré qu’une fois.',
  'Not enough on hand': 'Pas assez en stock',
  'Lot {0} is on hold.': 'Le lot {0} est bloqué.',
  'Lot {0} was taken back.': 'Le lot {0} a été repris.',
  'Lot {0} was taken back already.': 'Le lot {0} a déjà été repris.',
  'Lot {0} was used already.': 'Le lot {0} a déjà servi.',
  'Lot {0} is past its use-by date {1}.':
    'Le lot {0} a dépassé sa date limite de consommation du {1}.',
  'Lot {0} has no approved specification.': 'Le lot {0} n’a pas de fiche technique approuvée.',
  'Lot {0} has an allergen that is not known.': 'Un allergène du lot {0} est inconnu.',
  'What is on hand of lot {0} changes only by a movement.':
    'Le stock du lot {0} ne change que par un mouvement.',
  'The date of lot {0} may be brought forward, never put back.':
    'La date du lot {0} peut être avancée, jamais reculée.',
  'Lot {0} is fixed once it is made.': 'Le lot {0} ne change plus une fois fabriqué.',
  'Lot {0} takes only an approved specification of its own supplier.':
    'Le lot {0} ne prend qu’une fiche technique approuvée de son propre fournisseur.',
  'The scope of recall case {0} is frozen.': 'Le périmètre du rappel {0} est figé.',
  'Recipe version {0} has been used and never changes.':
    'La version de recette {0} a été utilisée et ne change plus.',
  'Batch {0} is itself a part.': 'La fabrication {0} est elle-même une partie.',
  'A part is made by the recipe version of batch {0}.':
    'Une partie se fait selon la version de recette de la fabrication {0}.',
  'Batch {0} is closed or fixed.': 'La fabrication {0} est close ou ne change plus.',
  'Batch {0} does not balance: {1} g drawn, {2} g made, {3} g lost.':
    'Le bilan de la fabrication {0} n’est pas juste : {1} g prélevés, {2} g faits, {3} g perdus.',
  'A {0} movement is written by its own event.':
    'Un mouvement « {0} » est écrit par son propre événement.',
  '{0} is append-only: put a mistake right by an opposite entry.':
    '{0} : on ne fait qu’ajouter ; corrigez une erreur par une écriture contraire.',
  '{0} {1} of lot {2} are reserved for another batch.':
    '{0} {1} du lot {2} sont réservés à une autre fabrication.',
  'There is no {0} "{1}" here. Check the code or look it up in the list.':
    'Introuvable ici : {0} « {1} ». Vérifiez le code ou cherchez dans la liste.',
  '{0} is not a known field': '{0} n’est pas un champ connu',
  'Some fields are not right': 'Certains champs ne sont pas justes',
  'Put the fields right that are named under "errors" and send again. Nothing was booked.':
    'Corrigez les champs nommés sous « errors » et envoyez de nouveau. Rien n’a été enregistré.',
  'If-Match missing': 'If-Match manque',
  'Send If-Match with the version that you last read, so that nobody is overwritten.':
    'Envoyez If-Match avec la version lue en dernier, pour que personne ne soit écrasé.',
  'If-Match not readable': 'If-Match illisible',
  'Send If-Match: "3".': 'Envoyez If-Match : « 3 ».',
  'This {0} was changed by someone else meanwhile. Read it again, then change it.':
    'Modifié entre-temps par quelqu’un d’autre : {0}. Relisez, puis modifiez.',
};
