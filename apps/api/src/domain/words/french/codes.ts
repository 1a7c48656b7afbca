import type { Wording } from './wording';

export const codes: Wording = {
  'A GTIN is digits only.': 'Un GTIN n’a que des chiffres.',
  'A GTIN has 8, 12, 13 or 14 digits; this has {0}.':
    'Un GTIN a 8, 12, 13 ou 14 chiffres ; celui-ci en a {0}.',
  'Its check digit should be {0}; a digit was misread or mistyped.':
    'Sa clé de contrôle devrait être {0} ; un chiffre a été mal lu ou mal saisi.',
  "{0} isn't a GTIN. {1}": '{0} n’est pas un GTIN. {1}',
  'A code pattern has capitals, digits, - . / and the fields {YY} {MM} {DD} {SEQ} {CHECK}.':
    'Un modèle de code a des majuscules, des chiffres, - . / et les champs {YY} {MM} {DD} {SEQ} {CHECK}.',
  'A code pattern has no I, L or O: people read them as 1 and 0.':
    'Un modèle de code n’a ni I, ni L, ni O : on les lit comme 1 et 0.',
  'A code pattern ends in {SEQ}{CHECK}: the number and its check character.':
    'Un modèle de code finit par {SEQ}{CHECK} : le numéro et son caractère de contrôle.',
  'A code pattern has each part of the date once at most.':
    'Un modèle de code a chaque partie de la date une fois au plus.',
  'A lot code can’t begin like the tag of a mould, tank, place or batch.':
    'Un code de lot ne peut pas commencer comme celui d’un moule, d’une cuve, d’un lieu ou d’une fabrication.',
  'A lot code is 20 characters at most, so that bar codes can carry it.':
    'Un code de lot a 20 caractères au plus, pour tenir dans un code-barres.',
  'A Digital Link needs a GTIN or another key to stand on.':
    'Un lien GS1 Digital Link repose sur un GTIN ou une autre clé.',
  "/{0}/ can't stand at that place of the path.":
    '/{0}/ ne peut pas se trouver à cet endroit du chemin.',
  'The link has a broken percent sign.': 'Le lien a un signe pour cent abîmé.',
  'The path names no GTIN or other GS1 key.': 'Le chemin ne nomme ni GTIN ni autre clé GS1.',
  "The link has a GS1 attribute {0} that doesn't exist.":
    'Le lien a un attribut GS1 {0} qui n’existe pas.',
  "It isn't a web address with a path of GS1 keys.":
    'Ce n’est pas une adresse web dont le chemin porte des clés GS1.',
  'No GS1 identifier begins with {0}.': 'Aucun identifiant GS1 ne commence par {0}.',
  'There is no data in it.': 'Il n’y a pas de données.',
  "The brackets in {0} don't match.": 'Les parenthèses de {0} ne vont pas ensemble.',
  'It has no mark of GS1 data: neither brackets nor a leading FNC1.':
    'Il n’y a pas de marque de données GS1 : ni parenthèses ni FNC1 au début.',
  'its check digit is wrong, so a digit was misread or mistyped':
    'sa clé de contrôle est fausse ; un chiffre a donc été mal lu ou mal saisi',
  'there is no such day': 'ce jour n’existe pas',
  'there is no country of that number': 'aucun pays n’a ce numéro',
  'there is no currency of that number': 'aucune monnaie n’a ce numéro',
  'it is empty': 'c’est vide',
  'it is too short': 'c’est trop court',
  'it is too long': 'c’est trop long',
  'it must be digits only': 'il ne faut que des chiffres',
  'it has a character that GS1 data never has':
    'il y a un caractère que les données GS1 n’ont jamais',
  'There is no GS1 identifier ({0}).': 'Il n’y a pas d’identifiant GS1 ({0}).',
  "({0}) {1} can't be read as {2}: {3}.": '({0}) {1} ne peut pas être lu comme {2} : {3}.',
  '({0}) stands twice with different data.':
    '({0}) s’y trouve deux fois avec des données différentes.',
  '({0}) needs {1} beside it.': '({0}) demande {1} à côté.',
  "({0}) and ({1}) can't stand on one thing.":
    '({0}) et ({1}) ne peuvent pas se trouver sur une même chose.',
  "{0} isn't a date in the form YYMMDD.": '{0} n’est pas une date de la forme AAMMJJ.',
  'There is no text.': 'Il n’y a pas de texte.',
  'The text is too long for a code.': 'Le texte est trop long pour un code.',
  'It has none of the forms that are used here.': 'Il n’a aucune des formes utilisées ici.',
  'A till number is 13 places: 02, 04 or 20 to 29, then item (I), verifier (C), value (V), check (K).':
    'Un numéro de caisse a 13 positions : 02, 04 ou 20 à 29, puis article (I), vérification (C), valeur (V), clé (K).',
  'A verifier (C) stands before a value of four digits.':
    'Une vérification (C) précède une valeur de quatre chiffres.',
  'The {0} {1} has no room in {2}.': 'Le champ {0} ({1}) n’a pas la place dans {2}.',
  "{0} isn't a number of this shop's tills.": '{0} n’est pas un numéro des caisses de ce magasin.',
  'The verifier of {0} in {1} is wrong.': 'La vérification de {0} dans {1} est fausse.',
};
