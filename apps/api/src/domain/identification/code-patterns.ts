import type { Temporal } from 'temporal-polyfill';
import { ok, refuse, type Result } from '../refusals/result';
import { fitsLotElement } from './character-sets';
import { checkCharacter } from './mod-37-36';
import type { IdentificationRefusal } from './refusals';
import { say, type Sentence } from '../words/say';

/** What lots are called unless the workshop says otherwise: `261125-0041`. */
export const DEFAULT_LOT_PATTERN = '{YY}{MM}{DD}-{SEQ}{CHECK}';

/** Digits and capitals without I, L, O and U, which are misread as 1, 1, 0 and V. */
const SEQUENCE_ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const SEQUENCE_WIDTH = 3;
/** Room for 32^5, over 33 million, of one day. */
const WIDEST_SEQUENCE = 5;

const TOKEN = /\{(YY|MM|DD|SEQ|CHECK)\}/g;

/** Prefixes of things that aren't lots; a lot pattern can't begin like one of them. */
export const THING_PREFIXES = {
  mould: 'M',
  tank: 'T',
  batch: 'B',
  place: 'P',
  dispatch: 'D',
  complaint: 'C',
  recall: 'R',
} as const;
export type Thing = keyof typeof THING_PREFIXES;

/** Tags of lasting things are numbered through; papers and batches carry their day. */
const THING_PATTERNS: Readonly<Record<Thing, string>> = {
  mould: 'M-{SEQ}{CHECK}',
  tank: 'T-{SEQ}{CHECK}',
  place: 'P-{SEQ}{CHECK}',
  batch: 'B-{YY}{MM}{DD}-{SEQ}{CHECK}',
  dispatch: 'D-{YY}{MM}{DD}-{SEQ}{CHECK}',
  complaint: 'C-{YY}{MM}{DD}-{SEQ}{CHECK}',
  recall: 'R-{YY}{MM}{DD}-{SEQ}{CHECK}',
};

export const thingPattern = (thing: Thing): string => THING_PATTERNS[thing];

const refusePattern = (detail: Sentence): Result<never, IdentificationRefusal> =>
  refuse({ code: 'code-pattern-not-valid', detail });

const count = (pattern: string, token: string): number => pattern.split(token).length - 1;

/** Whether a workshop may call its lots by this pattern. */
export const checkCodePattern = (pattern: string): Result<string, IdentificationRefusal> => {
  const literals = pattern.replaceAll(TOKEN, '');
  if (!/^[A-Z0-9\-./]*$/.test(literals)) {
    return refusePattern(
      say`A code pattern has capitals, digits, - . / and the fields {YY} {MM} {DD} {SEQ} {CHECK}.`,
    );
  }
  if (/[ILO]/.test(literals)) {
    return refusePattern(say`A code pattern has no I, L or O: people read them as 1 and 0.`);
  }
  if (count(pattern, '{SEQ}') !== 1 || !pattern.endsWith('{SEQ}{CHECK}')) {
    return refusePattern(
      say`A code pattern ends in {SEQ}{CHECK}: the number and its check character.`,
    );
  }
  if (['{YY}', '{MM}', '{DD}'].some((token) => count(pattern, token) > 1)) {
    return refusePattern(say`A code pattern has each part of the date once at most.`);
  }
  if (Object.values(THING_PREFIXES).some((prefix) => pattern.startsWith(`${prefix}-`))) {
    return refusePattern(
      say`A lot code can’t begin like the tag of a mould, tank, place or batch.`,
    );
  }
  const widest = pattern.replaceAll(/\{(YY|MM|DD)\}/g, '00').replace('{SEQ}{CHECK}', '');
  if (!fitsLotElement(widest + '0'.repeat(WIDEST_SEQUENCE + 1))) {
    return refusePattern(say`A lot code is 20 characters at most, so that bar codes can carry it.`);
  }
  return ok(pattern);
};

const two = (value: number): string => String(value).padStart(2, '0');

/** All of a code that stands before its number: codes with one stem are numbered together. */
export const codeStem = (pattern: string, day: Temporal.PlainDate): string =>
  pattern
    .replace('{YY}', two(day.year % 100))
    .replace('{MM}', two(day.month))
    .replace('{DD}', two(day.day))
    .replace('{SEQ}{CHECK}', '');

const writeSequence = (sequence: number): string => {
  let rest = sequence;
  let text = '';
  while (rest > 0) {
    text = SEQUENCE_ALPHABET.charAt(rest % 32) + text;
    rest = Math.floor(rest / 32);
  }
  return text.padStart(SEQUENCE_WIDTH, '0');
};

export interface NumberedCode {
  readonly code: string;
  readonly sequence: number;
}

/**
 * The next code after the number `last` (0 for the first). A number whose check character would be
 * I, L, O or U is passed over, so that no code has a character that is misread.
 */
export const nextCode = (pattern: string, day: Temporal.PlainDate, last: number): NumberedCode => {
  const stem = codeStem(pattern, day);
  for (let sequence = last + 1; ; sequence += 1) {
    const body = stem + writeSequence(sequence);
    const check = checkCharacter(body);
    if (SEQUENCE_ALPHABET.includes(check)) return { code: body + check, sequence };
  }
};

/** The number inside a code of this stem; undefined when the code isn't one of them. */
export const sequenceOf = (stem: string, code: string): number | undefined => {
  if (!code.startsWith(stem) || !endsInItsCheck(code)) return undefined;
  const text = code.slice(stem.length, -1);
  if (text.length < SEQUENCE_WIDTH || text.length > WIDEST_SEQUENCE) return undefined;
  let sequence = 0;
  for (const character of text) {
    const value = SEQUENCE_ALPHABET.indexOf(character);
    if (value < 0) return undefined;
    sequence = sequence * 32 + value;
  }
  return sequence;
};

export const endsInItsCheck = (code: string): boolean =>
  /[A-Z0-9]/.test(code.slice(0, -1)) && checkCharacter(code.slice(0, -1)) === code.slice(-1);

/** Whether a text has the form of the pattern and ends in its check character. */
export const isCodeOf = (pattern: string, text: string): boolean => {
  const shape = pattern
    .replaceAll(/[.\-/]/g, '\\$&')
    .replace('{YY}', '[0-9]{2}')
    .replace('{MM}', '(?:0[1-9]|1[0-2])')
    .replace('{DD}', '(?:0[1-9]|[12][0-9]|3[01])')
    .replace('{SEQ}', `[${SEQUENCE_ALPHABET}]{${SEQUENCE_WIDTH},${WIDEST_SEQUENCE}}`)
    .replace('{CHECK}', `[${SEQUENCE_ALPHABET}]`);
  return new RegExp(`^${shape}$`).test(text) && endsInItsCheck(text);
};

/** As a person may have typed it: spaces dropped, capitals, I and L read as 1, O as 0. */
export const asTypedCode = (text: string): string =>
  text.toUpperCase().replaceAll(/\s/g, '').replaceAll(/[IL]/g, '1').replaceAll('O', '0');
