import type { Wording } from './wording';

export const lotsAndRecalls: Wording = {
  'A date is a promise about cold, clean, closed storage. It follows from what was recorded; whether it may stand on a label is decided by tests and the local authority.':
    'Une date est une promesse de froid, de propreté et de fermeture. Elle découle de ce qui a été noté ; si elle peut figurer sur une étiquette, les essais et l’autorité locale en décident.',
  '{0} is in the future. Book the freezer on the day it happens.':
    'Le {0} est dans l’avenir. Enregistrez le congélateur le jour même.',
  'The supplier gave no date for this lot.': 'Le fournisseur n’a pas donné de date pour ce lot.',
  'The supplier’s own date: {0} {1}.': 'La date du fournisseur : {0} {1}.',
  movement: 'mouvement',
  'Only a count, waste or sample is put right here. Correct a batch in the batch, and a dispatch by a return.':
    'Seuls un comptage, une perte ou un échantillon se corrigent ici. Corrigez une fabrication dans la fabrication, et une expédition par un retour.',
  'This entry was put right already.': 'Cette écriture a déjà été corrigée.',
  'open hold': 'blocage en cours',
  'Lot {0} ({1}) still has no specification. Approve one of its supplier, pin it to the lot, then release the hold.':
    'Le lot {0} ({1}) n’a toujours pas de fiche technique. Approuvez-en une de son fournisseur, attachez-la au lot, puis levez le blocage.',
  specification: 'fiche technique',
  'someone who left': 'quelqu’un qui est parti',
  'mould design': 'modèle de moule',
  '“{0}” is not a weight in grams, as 8.615.':
    '« {0} » n’est pas un poids en grammes, comme 8.615.',
  'Mould {0} is retired and stays so. Add a new tray under a tag of its own.':
    'Le moule {0} est retiré et le reste. Ajoutez une nouvelle plaque sous sa propre étiquette.',
  'holding its lots': 'le blocage de ses lots',
  'in open batch {0}': 'dans la fabrication ouverte {0}',
  'Recall {0} is {1}; {2} needs it {3}.':
    'État du rappel {0} : {1}. Pour {2}, il faut cet état : {3}.',
  'Nothing was found to recall: {0}.': 'Rien n’a été trouvé à rappeler : {0}.',
  'freezing its scope': 'figer son périmètre',
  'lot in scope': 'lot du périmètre',
  'a note': 'une note',
  closing: 'la clôture',
  'recall case': 'dossier de rappel',
  'The scope is what this record can reach. Whether and how to recall, and whom to tell, is for the responsible person together with the food authority. A lot is never safe because it is not listed.':
    'Le périmètre est ce que ces registres peuvent atteindre. S’il faut rappeler, comment, et qui prévenir, la personne responsable en décide avec l’autorité sanitaire. Un lot n’est jamais sûr parce qu’il n’est pas listé.',
  'booking what was recovered': 'l’enregistrement de ce qui est récupéré',
  'Recall {0}: goods that came back': 'Rappel {0} : marchandise revenue',
  'Lot {0} is not in recall {1}. Book it as an ordinary return, or open a case for it.':
    'Le lot {0} n’est pas dans le rappel {1}. Enregistrez-le comme un retour ordinaire, ou ouvrez un dossier pour lui.',
  'The role {0} may not do this.': 'Le rôle {0} ne peut pas faire cela.',
  'Goods with the GTIN {0}': 'Marchandise au GTIN {0}',
  'No item has this GTIN yet. Choose the item at goods in.':
    'Aucun article n’a encore ce GTIN. Choisissez l’article à la réception.',
  'No lot of it is on record.': 'Aucun lot n’en est enregistré.',
  'The item is out of use.': 'L’article est hors service.',
  'Nothing is left of lot {0}.': 'Il ne reste rien du lot {0}.',
  'It is on hold already.': 'Il est déjà bloqué.',
  'It is in {0}.': 'Il est dans {0}.',
  'On hold: {0}': 'Bloqué : {0}',
  '{0} must not be empty': '{0} ne doit pas être vide',
  '{0} is longer than {1} characters': '{0} dépasse {1} caractères',
  '{0} must be text': '{0} doit être un texte',
  'Not known here': 'Inconnu ici',
  '{0} reads like a lot of this workshop, but there is none of that code.':
    '{0} se lit comme un lot de cet atelier, mais aucun n’a ce code.',
  'This is a box of ours, but lot {0} is not on record.':
    'C’est une boîte de chez nous, mais le lot {0} n’est pas enregistré.',
  'This is a number of the till: it names a price, not a lot.':
    'C’est un numéro de caisse : il nomme un prix, pas un lot.',
  '{0} reads like a {1}, but there is none of that code.':
    '{0} se lit comme un code ({1}), mais aucun n’est enregistré.',
  'The mould is {0}.': 'État du moule : {0}.',
  'It is in batch {0}.': 'Il est dans la fabrication {0}.',
  'The mould is retired.': 'Le moule est retiré.',
  'The tank is empty.': 'La cuve est vide.',
  'The tank is out of use.': 'La cuve est hors service.',
  'The place is out of use.': 'Le lieu est hors service.',
  'A lot is counted twice in this stocktake. Add the two counts up.':
    'Un lot est compté deux fois dans cet inventaire. Additionnez les deux comptages.',
  stocktake: 'inventaire',
  'Only the latest {0} lots are shown. Ask for fewer days or one item.':
    'Seuls les {0} derniers lots sont montrés. Demandez moins de jours ou un seul article.',
  '1 lot': '1 lot',
  '{0} lots': '{0} lots',
  'from {0} to {1}': 'du {0} au {1}',
  '; of {0} more nobody recorded where they stood: they are not in it':
    ' ; de {0} autres, personne n’a noté où ils se trouvaient : ils n’y sont pas',
  '{0} kept in {1} {2}{3}': '{0}, gardés dans {1} {2}{3}',
  '{0} {1} ({2})': '{0} {1} ({2})',
  '{0}: reading {1} at {2}': '{0} : relevé {1}, {2}',
  'its lot': 'son lot',
  '{0} of its batch': '{0} de sa fabrication',
  'its delivery': 'sa livraison',
  'its place': 'son lieu',
  'its first use': 'sa première utilisation',
  ' until {0}': ' jusqu’au {0}',
  '{0} cast in mould {1} since {2}{3}': '{0}, moulés dans le moule {1} depuis {2}{3}',
  '; in its chain since {0}': ' ; dans sa chaîne depuis {0}',
  '{0} in tank {1} {2}{3}': '{0} dans la cuve {1} {2}{3}',
  '{0} made by batch {1}': '{0}, faits par la fabrication {1}',
  '{0} sent with {1}': '{0}, expédiés avec {1}',
  "{0} received under the supplier's lot {1}": '{0}, reçus sous le lot fournisseur {1}',
  '{0} under the code {1}': '{0} sous le code {1}',
  'Nothing to trace': 'Rien à tracer',
  'Nothing here has the code "{0}". Check it, or search for a smudged code.':
    'Rien ici n’a le code « {0} ». Vérifiez-le, ou cherchez un code abîmé.',
  '{0} of the {1}': '{0} de : {1}',
  'Something is missing': 'Il manque quelque chose',
  'This kind of trace needs "{0}" in the address.':
    'Cette sorte de traçage demande « {0} » dans l’adresse.',
};
