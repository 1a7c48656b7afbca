import { say, type Sentence } from '../words/say';

/** Longest name of an ingredient, in characters. */
export const NAME_LENGTH = 200;

// Control characters, surrogate halves, invisible joiners, and every mark that turns the direction
// of writing: in a label they could hide or reorder what is read.
const FORBIDDEN =
  /[\p{Cc}\p{Cs}\p{Co}\p{Cn}\u00ad\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\u061c]/u;
const RIGHT_TO_LEFT =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

/** Why a text can't stand on a label, or null. Labels speak left-to-right languages. */
export const textProblem = (text: string): Sentence | null => {
  if (text.trim() === '') return say`must not be empty`;
  if ([...text].length > NAME_LENGTH) return say`must have at most ${NAME_LENGTH} characters`;
  if (FORBIDDEN.test(text)) return say`must not hold control or direction characters`;
  if (RIGHT_TO_LEFT.test(text)) return say`must be written from left to right`;
  return null;
};

/** One form for one text: composed characters, single spaces, no space around. */
export const tidyText = (text: string): string =>
  text.normalize('NFC').replace(/\s+/gu, ' ').trim();
