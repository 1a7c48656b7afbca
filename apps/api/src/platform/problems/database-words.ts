import { named, say, type Sentence } from '../../domain/words/say';

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

type Telling = readonly [pattern: RegExp, told: (...parts: string[]) => Sentence];

/** What the triggers of prisma/migrations say when they refuse, put as sentences. */
const TELLINGS: readonly Telling[] = [
  [/^lot (\S+) was refused on arrival$/, (lot) => say`Lot ${lot} was refused on arrival.`],
  [/^lot (\S+) was taken back$/, (lot) => say`Lot ${lot} was taken back.`],
  [/^lot (\S+) was taken back already$/, (lot) => say`Lot ${lot} was taken back already.`],
  [/^lot (\S+) was used already$/, (lot) => say`Lot ${lot} was used already.`],
  [/^lot (\S+) is on hold$/, (lot) => say`Lot ${lot} is on hold.`],
  [
    /^lot (\S+) is past its use-by date (\S+)$/,
    (lot, day) => say`Lot ${lot} is past its use-by date ${day}.`,
  ],
  [
    /^lot (\S+) has no approved specification$/,
    (lot) => say`Lot ${lot} has no approved specification.`,
  ],
  [
    /^lot (\S+) has an allergen that is not known$/,
    (lot) => say`Lot ${lot} has an allergen that is not known.`,
  ],
  [
    /^what is on hand of lot (\S+) changes only by a movement$/,
    (lot) => say`What is on hand of lot ${lot} changes only by a movement.`,
  ],
  [
    /^the date of lot (\S+) may be brought forward, never put back$/,
    (lot) => say`The date of lot ${lot} may be brought forward, never put back.`,
  ],
  [/^lot (\S+) is fixed once it is made$/, (lot) => say`Lot ${lot} is fixed once it is made.`],
  [
    /^lot (\S+) takes only an approved specification of its own supplier$/,
    (lot) => say`Lot ${lot} takes only an approved specification of its own supplier.`,
  ],
  [
    /^the scope of recall case (\S+) is frozen$/,
    (code) => say`The scope of recall case ${code} is frozen.`,
  ],
  [
    /^recipe version (\S+) has been used and never changes$/,
    (version) => say`Recipe version ${version} has been used and never changes.`,
  ],
  [/^batch (\S+) is closed or fixed$/, (batch) => say`Batch ${batch} is closed or fixed.`],
  [/^batch (\S+) is itself a part$/, (batch) => say`Batch ${batch} is itself a part.`],
  [
    /^a part is made by the recipe version of batch (\S+)$/,
    (batch) => say`A part is made by the recipe version of batch ${batch}.`,
  ],
  [
    /^batch (\S+) does not balance: (\S+) g drawn, (\S+) g made, (\S+) g lost$/,
    (batch, drawn, made, lost) =>
      say`Batch ${batch} does not balance: ${drawn} g drawn, ${made} g made, ${lost} g lost.`,
  ],
  [
    /^a (\S+) movement is written by its own event$/,
    (kind) => say`A ${kind} movement is written by its own event.`,
  ],
  [
    /^(\S+) is append-only: put a mistake right by an opposite entry$/,
    (table) => say`${capital(table)} is append-only: put a mistake right by an opposite entry.`,
  ],
  [
    /^(\S+) (\S+) of lot (\S+) are reserved for another batch$/,
    (quantity, unit, lot) => say`${quantity} ${unit} of lot ${lot} are reserved for another batch.`,
  ],
];

/** The same text as a sentence; one without values is its own wording. */
export const databaseWords = (words: string): Sentence => {
  for (const [pattern, tell] of TELLINGS) {
    const found = pattern.exec(words);
    if (found !== null) return tell(...found.slice(1));
  }
  return named(`${capital(words)}.`);
};
