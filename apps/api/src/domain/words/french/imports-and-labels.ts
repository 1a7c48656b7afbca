import type { Wording } from './wording';

export const importsAndLabels: Wording = {
  'is not readable as CSV': 'n’est pas lisible comme CSV',
  'is empty; the first line names columns: {0}':
    'est vide ; la première ligne nomme les colonnes : {0}',
  'has more than {0} lines': 'a plus de {0} lignes',
  'has {0} cells; the header has {1}': 'a {0} cellules ; l’en-tête en a {1}',
  'is no column here: {0}': 'n’est pas une colonne ici : {0}',
  'stands twice in the header': 'est deux fois dans l’en-tête',
  'is missing from the header': 'manque dans l’en-tête',
  register: 'registre',
  'The file is not clean': 'Le fichier n’est pas sans faute',
  'Nothing was written. Put right what is named under "errors", line by line, and send it again.':
    'Rien n’a été écrit. Corrigez ce qui est nommé sous « errors », ligne par ligne, et envoyez-le de nouveau.',
  'is {0} already and can’t become {1}':
    'est déjà de la sorte « {0} » et ne peut pas devenir « {1} »',
  'is {0} already; stock is kept in it': 'est déjà en {0} ; le stock est tenu ainsi',
  'belongs to {0}': 'appartient à {0}',
  'there is no “{0}”': 'il n’y a pas de « {0} »',
  'is {0} and isn’t sold: pieces and boxes have prices':
    'est de la sorte « {0} » et n’est pas vendu : les bonbons et les boîtes ont des prix',
  '“{0}” stands on line {1} already': '« {0} » est déjà à la ligne {1}',
  'is longer than {0} characters': 'dépasse {0} caractères',
  'is missing': 'manque',
  'must be one of: {0}': 'doit être l’un de : {0}',
  'must be yes or no': 'doit être yes ou no',
  '; write a point, not a comma': ' ; écrivez un point, pas une virgule',
  'must be a number with at most {0} decimals{1}':
    'doit être un nombre avec au plus {0} décimales{1}',
  'must be a day, as 2026-11-25': 'doit être un jour, comme 2026-11-25',
  '“{0}” is not one of: {1}': '« {0} » n’est pas l’un de : {1}',
  'is not readable as JSON': 'n’est pas lisible comme JSON',
  'states the alcohol twice: leave one of the two empty':
    'indique l’alcool deux fois : laissez l’un des deux vide',
  'must be at most 100': 'doit être au plus 100',
  '{0} is stated twice': '{0} est indiqué deux fois',
  'is {0}, no ingredient': 'est de la sorte « {0} », pas un ingrédient',
  'Lot {0} has no date. Give its recipe a shelf life first.':
    'Le lot {0} n’a pas de date. Donnez d’abord une durée de conservation à sa recette.',
  'Lot {0} is on hold: {1}': 'Le lot {0} est bloqué : {1}',
  'Lot {0} was refused on arrival.': 'Le lot {0} a été refusé à l’arrivée.',
  'Nothing says that {0} may have got into lot {1}.':
    'Rien ne dit que cet allergène ({0}) a pu entrer dans le lot {1}.',
  '{0} can’t be left out: its amount isn’t known to be below the action level. State it, or have it measured.':
    'Allergène {0} : ne peut pas être omis, car rien n’établit que sa quantité est inférieure au seuil d’action. Indiquez-le, ou faites-le mesurer.',
  'Not a language of labels': 'Pas une langue d’étiquette',
  'Labels speak {0}.': 'Langues des étiquettes : {0}.',
  'label run': 'impression d’étiquettes',
  'Lot {0} changed while its label was drawn. Look at it and print again.':
    'Le lot {0} a changé pendant que son étiquette se préparait. Regardez-le et imprimez de nouveau.',
  'The label settings are not right': 'Les réglages de l’étiquette ne sont pas justes',
  'Put the fields right that are named under "errors". Nothing was saved.':
    'Corrigez les champs nommés sous « errors ». Rien n’a été enregistré.',
  'is no known allergen': 'n’est pas un allergène connu',
  workshop: 'atelier',
  'must be grams, as "125.2"': 'doit être en grammes, comme « 125.2 »',
  'A weight is not right': 'Un poids n’est pas juste',
  'See "errors".': 'Voyez « errors ».',
  'This bar code needs the item’s GTIN. Enter it, or choose the workshop’s own code.':
    'Ce code-barres demande le GTIN de l’article. Saisissez-le, ou choisissez le code propre à l’atelier.',
  '{0} is a number for the shop’s own tills and may not leave it in a GS1 code. Enter the item’s own GTIN, or choose EAN-13 or the workshop’s own code.':
    '{0} est un numéro des caisses du magasin et ne doit pas en sortir dans un code GS1. Saisissez le GTIN propre à l’article, ou choisissez l’EAN-13 ou le code propre à l’atelier.',
  'A till’s bar code has 13 digits; this item’s GTIN stands for a case.':
    'Un code-barres de caisse a 13 chiffres ; le GTIN de cet article est celui d’un carton.',
  'This workshop’s own figures: estimates from recipes as designed beside readings by calibrated meters. They say how far the model may be trusted here, and validate no shelf life.':
    'Les chiffres de cet atelier : les estimations des recettes telles que prévues, à côté des relevés d’appareils étalonnés. Ils disent jusqu’où l’on peut se fier au modèle ici, et ne valident aucune durée de conservation.',
  '{0} is packaging: it has no recipe.': '{0} est un emballage : il n’a pas de recette.',
  '{0} is kept by the piece: state how many pieces these lines give.':
    '{0} est tenu à la pièce : indiquez combien de pièces donnent ces lignes.',
  '{0} is kept by weight: state grams, not pieces.':
    '{0} est tenu au poids : indiquez des grammes, pas des pièces.',
  '{0}: a quantity is more than nought.': '{0} : une quantité est supérieure à zéro.',
  '{0} is kept by the piece: give a whole number.':
    '{0} est tenu à la pièce : donnez un nombre entier.',
  '{0}: packaging, and only packaging, has the role “packaging”.':
    '{0} : un emballage, et lui seul, a le rôle « emballage ».',
  'Version {0} of {1} has been used, so it never changes. Write a new version.':
    'La version {0} de {1} a été utilisée ; elle ne change donc plus. Écrivez une nouvelle version.',
  '{0} is not an ingredient: what it is made of follows from its recipe.':
    '{0} n’est pas un ingrédient : sa composition découle de sa recette.',
  'generic row': 'ligne générique',
  'The specification is not right': 'La fiche technique n’est pas juste',
  'An approved specification never changes. Write a new version of it instead.':
    'Une fiche technique approuvée ne change jamais. Écrivez-en une nouvelle version.',
  '{0} is made or bought as packaging; only ingredients are specified.':
    '{0} est fabriqué ou acheté comme emballage ; seuls les ingrédients ont une fiche technique.',
  'Only an approved specification is withdrawn.':
    'Seule une fiche technique approuvée peut être retirée.',
};
