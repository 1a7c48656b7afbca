/**
 * What the service says to a person, put so that it can be told in another language. A sentence is
 * its English text in which the sentence, and each value inside it, stands between the characters
 * that Unicode has for setting off embedded text (first strong isolate, pop directional isolate).
 * They take no room, and texts that people send may not hold them, so a sentence can be joined with
 * others, stored and read back, and its wording still be told apart from the names in it. Where a
 * text leaves the service, `inLanguage` or `inEnglish` takes the marks away.
 */
export type Sentence = string & { readonly sentence: true };

export const OPEN = '\u2068';
export const CLOSE = '\u2069';
const MARKS = /[\u2068\u2069]/g;

/** Say`Lot ${code} is empty.` A value may hold sentences of its own. */
export const say = (
  words: TemplateStringsArray,
  ...values: readonly (string | number)[]
): Sentence => {
  const told = words.map((part, place) =>
    place === 0 ? part : `${OPEN}${values[place - 1] ?? ''}${CLOSE}${part}`,
  );
  return `${OPEN}${told.join('')}${CLOSE}` as Sentence;
};

export const isSaid = (text: string): boolean => text.includes(OPEN);

/** A word of the service inside a sentence, as the state of a batch or the name of an allergen. */
export const named = (word: string): Sentence =>
  (isSaid(word) ? word : `${OPEN}${word}${CLOSE}`) as Sentence;

/** "a or b or c" */
export const anyOf = (words: readonly (string | number)[]): Sentence =>
  words.slice(1).reduce<Sentence>((list, word) => say`${list} or ${word}`, first(words));

/** "a and b" */
export const allOf = (words: readonly (string | number)[]): Sentence =>
  words.slice(1).reduce<Sentence>((list, word) => say`${list} and ${word}`, first(words));

const first = (words: readonly (string | number)[]): Sentence => String(words[0] ?? '') as Sentence;

/** Several sentences, one after the other. */
export const sentences = (said: readonly Sentence[], between = ' '): Sentence =>
  said.join(between) as Sentence;

export const inEnglish = (text: string): string => text.replace(MARKS, '');

interface Piece {
  readonly isMarked: boolean;
  readonly text: string;
}

/** The text cut at its outermost marks. A mark without its partner sets nothing off. */
const pieces = (text: string): Piece[] => {
  const found: Piece[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (sign === OPEN) {
      if (depth === 0) {
        found.push({ isMarked: false, text: text.slice(from, at) });
        from = at + 1;
      }
      depth += 1;
    } else if (sign === CLOSE && depth > 0) {
      depth -= 1;
      if (depth === 0) {
        found.push({ isMarked: true, text: text.slice(from, at) });
        from = at + 1;
      }
    }
  }
  return [...found, { isMarked: false, text: text.slice(from) }];
};

/** Wordings by their English one, with numbered slots: "Lot {0} is empty." */
export type Wordings = ReadonlyMap<string, string>;

const translated = (sentence: string, wordings: Wordings): string => {
  const values: string[] = [];
  let english = '';
  for (const { isMarked, text } of pieces(sentence)) {
    english += isMarked ? `{${values.length}}` : text;
    if (isMarked) values.push(told(text, wordings));
  }
  const wording = wordings.get(english) ?? english;
  return wording.replace(/\{(\d+)\}/g, (slot, number: string) => values[Number(number)] ?? slot);
};

/** A text with every sentence in it in the given wordings; one that has none stays English. */
export const told = (text: string, wordings: Wordings): string =>
  inEnglish(
    pieces(text)
      .map((piece) => (piece.isMarked ? translated(piece.text, wordings) : piece.text))
      .join(''),
  );
