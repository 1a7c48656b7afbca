import { ok, refuse, type Result } from '../refusals/result';
import { applicationIdentifier, matchesPattern } from './application-identifiers';
import type { ApplicationIdentifier, ContentRule, ElementPart } from './application-identifiers';
import { isWithin } from './character-sets';
import { checkDigit } from './check-digits';
import { isCountryNumber, isCurrencyNumber } from './iso-numbers';
import type { IdentificationRefusal } from './refusals';
import { anyOf, named, say, type Sentence } from '../words/say';

/** One identifier with its data, as `(10)` and `AB-12`. */
export interface Element {
  readonly ai: string;
  readonly value: string;
}

export const refuseElement = (
  detail: Sentence,
  facts: Readonly<Record<string, unknown>> = {},
): Result<never, IdentificationRefusal> => refuse({ code: 'gs1-data-not-valid', detail, facts });

/**
 * A date is checked here without a century: a 29 February is taken as good when any year that ends
 * in those two digits is a leap year, and `00` is (2000). Day 00 stands for the end of the month.
 */
const isShortDate = (text: string): boolean => {
  const year = 2000 + Number(text.slice(0, 2));
  const month = Number(text.slice(2, 4));
  const day = Number(text.slice(4, 6));
  return month >= 1 && month <= 12 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
};

/** Each rule with what is said when the text breaks it. */
const RULES: Readonly<Record<ContentRule, readonly [(text: string) => boolean, string]>> = {
  'check-digit': [
    (text) => checkDigit(text.slice(0, -1)) === text.slice(-1),
    say`its check digit is wrong, so a digit was misread or mistyped`,
  ],
  date: [isShortDate, say`there is no such day`],
  country: [isCountryNumber, say`there is no country of that number`],
  currency: [isCurrencyNumber, say`there is no currency of that number`],
};

const breaksRule = (part: ElementPart, text: string): string | undefined => {
  if (part.rule === undefined) return undefined;
  const [holds, saying] = RULES[part.rule];
  return holds(text) ? undefined : saying;
};

const breaksPart = (part: ElementPart, text: string): string | undefined => {
  if (text === '' && part.min === 0) return undefined;
  if (text.length < Math.max(part.min, 1))
    return text === '' ? say`it is empty` : say`it is too short`;
  if (text.length > part.max) return say`it is too long`;
  if (!isWithin(part.set, text)) {
    return part.set === 'N'
      ? say`it must be digits only`
      : say`it has a character that GS1 data never has`;
  }
  return breaksRule(part, text);
};

/** What is wrong with the data of an element, in words; undefined when nothing is. */
const whatIsWrong = (identifier: ApplicationIdentifier, value: string): string | undefined => {
  let from = 0;
  for (const [index, part] of identifier.parts.entries()) {
    const isLast = index === identifier.parts.length - 1;
    // Only the last component has an open end; a longer value is caught there.
    const text = isLast ? value.slice(from) : value.slice(from, from + part.max);
    const wrong = breaksPart(part, text);
    if (wrong !== undefined) return wrong;
    from += text.length;
  }
  return undefined;
};

export const checkElement = ({ ai, value }: Element): Result<Element, IdentificationRefusal> => {
  const identifier = applicationIdentifier(ai);
  if (identifier === undefined) {
    return refuseElement(say`There is no GS1 identifier (${ai.slice(0, 6)}).`, {
      ai: ai.slice(0, 6),
    });
  }
  const wrong = whatIsWrong(identifier, value);
  return wrong === undefined
    ? ok({ ai, value })
    : refuseElement(
        say`(${ai}) ${value.slice(0, 40)} can't be read as ${named(identifier.title)}: ${wrong}.`,
        {
          ai,
          value: value.slice(0, 40),
        },
      );
};

/**
 * Whether the elements may stand together on one thing: none twice with different data, none without
 * the one it belongs to, none beside one that it excludes.
 */
export const checkTogether = (
  elements: readonly Element[],
): Result<readonly Element[], IdentificationRefusal> => {
  const present = new Map<string, string>();
  for (const { ai, value } of elements) {
    if (present.has(ai) && present.get(ai) !== value) {
      return refuseElement(say`(${ai}) stands twice with different data.`, { ai });
    }
    present.set(ai, value);
  }
  const isPresent = (pattern: string, except?: string): string | undefined =>
    [...present.keys()].find((ai) => ai !== except && matchesPattern(ai, pattern));
  for (const ai of present.keys()) {
    const identifier = applicationIdentifier(ai);
    if (identifier === undefined) continue;
    for (const group of identifier.needs) {
      if (group.every((pattern) => isPresent(pattern) === undefined)) {
        return refuseElement(say`(${ai}) needs ${anyOf(group.map((p) => `(${p})`))} beside it.`, {
          ai,
        });
      }
    }
    const excluded = identifier.excludes.map((pattern) => isPresent(pattern, ai)).find(Boolean);
    if (excluded !== undefined) {
      return refuseElement(say`(${ai}) and (${excluded}) can't stand on one thing.`, {
        ai,
        excluded,
      });
    }
  }
  return ok(elements);
};
