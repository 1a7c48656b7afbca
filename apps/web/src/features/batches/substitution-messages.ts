import { catalogue } from '../../shared/language/catalogue';

export const substitutionMessages = catalogue('substitutions', {
  substitution: ['What changes with this lot', 'Ce qui change avec ce lot'],
  substitutes: [
    '{{substitute}} in place of {{original}}',
    '{{substitute}} à la place de {{original}}',
  ],
  adds: ['{{substitute}} in addition to the recipe', '{{substitute}} en plus de la recette'],
  insteadOf: ['In place of', 'À la place de'],
  inAddition: ['nothing: in addition to the recipe', 'rien : en plus de la recette'],
  notInRecipe: [
    'Lot {{lot}} is {{item}}, which this recipe does not name.',
    'Le lot {{lot}} est du produit {{item}}, que cette recette ne nomme pas.',
  ],
  notUsable: ['This lot can’t be used', 'Ce lot ne peut pas être utilisé'],
  sameAllergens: [
    'No allergen changes, as far as the specifications say',
    'Aucun allergène ne change, d’après les fiches',
  ],
  changesTo: ['{{before}} → {{after}}', '{{before}} → {{after}}'],
  labelChanges: ['The label must change.', 'L’étiquette doit changer.'],
  figures: ['The product as designed', 'Le produit tel que conçu'],
  asWritten: ['As written', 'Selon la recette'],
  withThisLot: ['With this lot', 'Avec ce lot'],
  waterEstimate: ['Water activity, estimated', 'Activité de l’eau, estimée'],
  sweetness: ['Relative sweetness', 'Pouvoir sucrant'],
  costOf: ['{{item}}, as planned', '{{item}}, quantité prévue'],
  notEnough: [
    'The lot holds less than the recipe asks for.',
    'Le lot contient moins que ce que demande la recette.',
  ],
  caution: [
    'Computed from the specifications that were approved. A label already printed knows nothing of this: compare it before anything leaves.',
    'Calculé d’après les fiches approuvées. Une étiquette déjà imprimée n’en sait rien : comparez-la avant tout départ.',
  ],
  accept: [
    'I have read what changes and take this lot instead',
    'J’ai lu ce qui change et je prends ce lot à la place',
  ],
  acceptAddition: [
    'I have read what changes and put this lot in',
    'J’ai lu ce qui change et j’ajoute ce lot',
  ],
  changesOf: [
    'Lot {{lot}} is not what the recipe names. With it the product changes:',
    'Le lot {{lot}} n’est pas ce que nomme la recette. Avec lui le produit change :',
  ],
  acceptNeeded: ['Read what changes, then tick here.', 'Lisez ce qui change, puis cochez ici.'],
  waitForIt: [
    'What changes is not known yet, so this can’t be accepted.',
    'Ce qui change n’est pas encore connu : impossible d’accepter.',
  ],
  reason: ['Why this lot instead', 'Pourquoi ce lot à la place'],
  reasonAddition: ['Why something outside the recipe', 'Pourquoi un produit hors recette'],
  reasonNeeded: ['Say why in a few words.', 'Dites pourquoi en quelques mots.'],
  roleNeeded: ['Say as what it goes in.', 'Dites comme quoi il entre.'],
  looking: ['Looking at the lot…', 'Recherche du lot…'],
  unseen: [
    'This lot can’t be looked at now, so nobody knows whether it is what the recipe asks for. Choose one from the list, or try again with a connection.',
    'Impossible de consulter ce lot : rien ne dit qu’il est bien ce que demande la recette. Choisissez-en un dans la liste, ou réessayez avec une connexion.',
  ],
});
