import type { Temporal } from 'temporal-polyfill';
import { isGtin } from './check-digits';
import { asTypedCode, isCodeOf, thingPattern, THING_PREFIXES, type Thing } from './code-patterns';
import { looksLikeLink, readDigitalLink } from './digital-link';
import type { Element } from './element';
import { afterGs1Symbol, GROUP_SEPARATOR, readElements, readMessage } from './element-strings';
import { readGs1Facts, type Gs1Facts } from './gs1-facts';
import type { IdentificationRefusal } from './refusals';
import type { Result } from '../refusals/result';
import { isRestrictedNumber } from './till-numbers';
import { inEnglish, say, type Sentence } from '../words/say';

/** What a scanned or typed text is, before anything is looked up. */
export type Recognised =
  | { readonly kind: 'lot'; readonly code: string }
  | { readonly kind: Thing; readonly code: string }
  | { readonly kind: 'box'; readonly lotCode: string; readonly facts: Gs1Facts }
  | { readonly kind: 'supplier'; readonly facts: Gs1Facts }
  | { readonly kind: 'product'; readonly gtin: string }
  | { readonly kind: 'till'; readonly number: string }
  | {
      readonly kind: 'unknown';
      readonly text: string;
      readonly why: string;
      readonly said: Sentence;
    };

export interface ScanContext {
  readonly today: Temporal.PlainDate;
  readonly lotPattern: string;
  readonly gs1CompanyPrefix: string | undefined;
}

/** Longer than any symbol that a hand scanner reads. */
const LONGEST_TEXT = 2000;

/** `]XY` before the data, when the scanner is set to say which symbology it read. */
const SYMBOLOGY_IDENTIFIER = /^\][A-Za-z][0-9A-Za-z]/;

const things = Object.keys(THING_PREFIXES) as Thing[];

const ownCode = (text: string, { lotPattern }: ScanContext): Recognised | undefined => {
  // A label prints the lot mark with an L before it; no code of ours has an L.
  const typed = text.replace(/^\s*[Ll](?:[Oo][Tt])?[\s:]*(?=.{4})/, '');
  for (const candidate of [asTypedCode(text), asTypedCode(typed)]) {
    const thing = things.find((kind) => isCodeOf(thingPattern(kind), candidate));
    if (thing !== undefined) return { kind: thing, code: candidate };
    if (isCodeOf(lotPattern, candidate)) return { kind: 'lot', code: candidate };
  }
  return undefined;
};

/** The workshop's own number range, as it begins inside a GTIN-14 (after the indicator digit). */
const isOwnGtin = (gtin: string, prefix: string | undefined): boolean =>
  prefix !== undefined && prefix !== '' && gtin.slice(1).startsWith(prefix);

const unknown = (text: string, said: Sentence): Recognised => ({
  kind: 'unknown',
  text,
  why: inEnglish(said),
  said,
});

const fromElements = (
  read: Result<readonly Element[], IdentificationRefusal>,
  context: ScanContext,
  text: string,
): Recognised => {
  if (!read.ok) return unknown(text, read.refusal.detail);
  const facts = readGs1Facts(read.value, context.today);
  if (!facts.ok) return unknown(text, facts.refusal.detail);
  const { gtin, lotCode } = facts.value;
  if (gtin !== undefined && isOwnGtin(gtin, context.gs1CompanyPrefix)) {
    return lotCode === undefined
      ? { kind: 'product', gtin }
      : { kind: 'box', lotCode, facts: facts.value };
  }
  return { kind: 'supplier', facts: facts.value };
};

/** A scanner that sends no symbology identifier: a GTIN element or a separator gives it away. */
const unmarkedMessage = (
  text: string,
): Result<readonly Element[], IdentificationRefusal> | undefined => {
  const startsLikeItem = /^0[12][0-9]{14}/.test(text) && isGtin(text.slice(2, 16));
  if (!startsLikeItem && !text.includes(GROUP_SEPARATOR)) return undefined;
  return readMessage(text);
};

/**
 * Says what a text from a scanner or a keyboard is: a GS1 element string or Digital Link (of a
 * supplier, or of one of our own boxes), one of our own codes, the number of a product or of the
 * till. Nothing is looked up, so a code with our form may still be unknown to the database.
 */
export const recogniseScan = (raw: string, context: ScanContext): Recognised => {
  const text = raw.replace(/^[\r\n\t ]+|[\r\n\t ]+$/g, '');
  if (text === '') return unknown(text, say`There is no text.`);
  if (text.length > LONGEST_TEXT) {
    return unknown(text.slice(0, 60), say`The text is too long for a code.`);
  }
  if (afterGs1Symbol(text) !== undefined || ['(', '^', GROUP_SEPARATOR].includes(text.charAt(0))) {
    return fromElements(readElements(text), context, text);
  }
  const plain = text.replace(SYMBOLOGY_IDENTIFIER, '');
  if (looksLikeLink(plain)) return fromElements(readDigitalLink(plain), context, plain);
  const own = ownCode(plain, context);
  if (own !== undefined) return own;
  const unmarked = unmarkedMessage(plain);
  if (unmarked !== undefined) return fromElements(unmarked, context, plain);
  if (isGtin(plain)) {
    const gtin = plain.padStart(14, '0');
    const isTill = plain.length === 13 && isRestrictedNumber(plain);
    return isTill ? { kind: 'till', number: plain } : { kind: 'product', gtin };
  }
  return unknown(plain, say`It has none of the forms that are used here.`);
};
