/**
 * GS1 AI encodable character set 82: letters, digits and these marks; no space, no #, $, @, brackets
 * other than round ones, no caret. Lot codes and serials are written in it (GS1 General
 * Specifications, figure 7.11-1).
 */
const CSET_82 = /^[!"%&'()*+,\-./0-9:;<=>?A-Z_a-z]*$/;

/** Character set 39: digits, capitals, # - and /. */
const CSET_39 = /^[#\-/0-9A-Z]*$/;

const DIGITS = /^[0-9]*$/;

export type CharacterSet = 'N' | 'X' | 'Y';

const SETS: Readonly<Record<CharacterSet, RegExp>> = { N: DIGITS, X: CSET_82, Y: CSET_39 };

export const isWithin = (set: CharacterSet, text: string): boolean => SETS[set].test(text);

/** Longest batch or lot code that GS1 AI (10) carries. */
export const LONGEST_LOT_CODE = 20;

/** Whether a code can stand in GS1 AI (10). */
export const fitsLotElement = (code: string): boolean =>
  code.length > 0 && code.length <= LONGEST_LOT_CODE && isWithin('X', code);
