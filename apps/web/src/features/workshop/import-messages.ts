import { catalogue } from '../../shared/language/catalogue';

export const importMessages = catalogue('imports', {
  title: ['Take registers in', 'Reprendre des registres'],
  lead: [
    'From a CSV file, tried first: every problem is named by its line, and nothing is written while there is one.',
    'Depuis un fichier CSV, essayé d’abord : chaque problème est cité par sa ligne, et rien n’est écrit tant qu’il en reste un.',
  ],
  register: ['Register', 'Registre'],
  ingredients: ['Ingredients', 'Ingrédients'],
  specifications: ['Specifications', 'Fiches des fournisseurs'],
  'price-lists': ['Price lists', 'Tarifs'],
  first: ['1. Save the register as it is', '1. Enregistrer le registre tel quel'],
  firstLead: [
    'The file has the columns that are read here. Change or add lines in it; columns that you leave out stay as they are.',
    'Le fichier a les colonnes lues ici. Modifiez ou ajoutez des lignes ; les colonnes omises restent inchangées.',
  ],
  save: ['Save {{register}} as CSV', 'Enregistrer en CSV : {{register}}'],
  second: ['2. Try a file', '2. Essayer un fichier'],
  file: ['CSV file', 'Fichier CSV'],
  writing: ['Writing…', 'Écriture…'],
  trying: ['Trying the file…', 'Essai du fichier…'],
  third: ['3. Write it', '3. L’écrire'],
  lines: ['Lines', 'Lignes'],
  created: ['New', 'Nouvelles'],
  changed: ['Changed', 'Modifiées'],
  unchanged: ['As before', 'Inchangées'],
  clean: [
    'The file is clean; nothing is written yet',
    'Le fichier est sans faute ; rien n’est encore écrit',
  ],
  notClean_one: ['{{count}} problem: nothing is written', '{{count}} problème : rien n’est écrit'],
  notClean_other: [
    '{{count}} problems: nothing is written',
    '{{count}} problèmes : rien n’est écrit',
  ],
  noLines: ['The file has no lines', 'Le fichier n’a aucune ligne'],
  written: ['Written', 'Écrit'],
  write: ['Write these lines', 'Écrire ces lignes'],
  problems: ['Problems', 'Problèmes'],
  line: ['Line', 'Ligne'],
  column: ['Column', 'Colonne'],
  problem: ['What is wrong', 'Ce qui ne va pas'],
  draftCaution: [
    'Specifications come in as drafts: somebody reads and approves each before its lots can be used.',
    'Les fiches entrent comme brouillons : quelqu’un lit et approuve chacune avant que ses lots servent.',
  ],
});
