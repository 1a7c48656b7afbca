import { ok, type Result } from '../refusals/result';
import { identifierAt, needsSeparator } from './application-identifiers';
import { checkElement, checkTogether, refuseElement, type Element } from './element';
import type { IdentificationRefusal } from './refusals';
import { say } from '../words/say';

/** What a scanner sends where the symbol has FNC1 between two elements: ASCII 29. */
export const GROUP_SEPARATOR = '\u001D';

/** Symbology identifiers (ISO/IEC 15424) that say "GS1 element strings follow". */
const GS1_SYMBOLS = [']C1', ']d2', ']Q3', ']e0', ']J1'];

type Elements = Result<readonly Element[], IdentificationRefusal>;

/** Reads what follows the leading FNC1: elements run together, GS after those of open length. */
export const readMessage = (message: string): Elements => {
  const elements: Element[] = [];
  let rest = message;
  while (rest !== '') {
    // One needless FNC1 after an element of fixed length is tolerated; it is read by the branch below.
    const identifier = identifierAt(rest);
    if (identifier === undefined) {
      return refuseElement(say`No GS1 identifier begins with ${rest.slice(0, 4)}.`, {
        at: message.length - rest.length,
      });
    }
    const { ai, parts } = identifier;
    const body = rest.slice(ai.length);
    const separator = body.indexOf(GROUP_SEPARATOR);
    const open = separator < 0 ? body.length : separator;
    const fixed = parts.reduce((length, part) => length + part.max, 0);
    const length = needsSeparator(ai) ? open : Math.min(fixed, open);
    const element = checkElement({ ai, value: body.slice(0, length) });
    if (!element.ok) return element;
    elements.push(element.value);
    rest = body.slice(length);
    if (rest.startsWith(GROUP_SEPARATOR)) rest = rest.slice(1);
  }
  return elements.length === 0 ? refuseElement(say`There is no data in it.`) : ok(elements);
};

/** Reads the human form, `(01)…(10)…`; a bracket that belongs to the data is written `\(`. */
export const readBracketed = (text: string): Elements => {
  const elements: Element[] = [];
  let rest = text;
  while (rest !== '') {
    const match = /^\(([^()]*)\)((?:\\\(|[^(])*)/.exec(rest);
    if (match === null)
      return refuseElement(say`The brackets in ${text.slice(0, 60)} don't match.`);
    const [whole, ai = '', value = ''] = match;
    const element = checkElement({ ai, value: value.replaceAll('\\(', '(') });
    if (!element.ok) return element;
    elements.push(element.value);
    rest = rest.slice(whole.length);
  }
  return elements.length === 0 ? refuseElement(say`There is no data in it.`) : ok(elements);
};

/** The data after a symbology identifier of a GS1 symbol; undefined for any other text. */
export const afterGs1Symbol = (text: string): string | undefined => {
  const symbol = GS1_SYMBOLS.find((identifier) => text.startsWith(identifier));
  return symbol === undefined ? undefined : text.slice(symbol.length);
};

/**
 * Reads element strings in any form a person or a scanner sends: with a symbology identifier, with a
 * leading FNC1 written as ^ or sent as GS, or in brackets. Bare digits are refused: without the
 * leading FNC1 nothing says that they are GS1 data.
 */
export const readElements = (text: string): Elements => {
  if (text.startsWith('(')) return readBracketed(text);
  const scanned = afterGs1Symbol(text);
  if (scanned !== undefined) {
    return readMessage(scanned.startsWith(GROUP_SEPARATOR) ? scanned.slice(1) : scanned);
  }
  if (text.startsWith('^')) return readMessage(text.slice(1).replaceAll('^', GROUP_SEPARATOR));
  if (text.startsWith(GROUP_SEPARATOR)) return readMessage(text.slice(1));
  return refuseElement(say`It has no mark of GS1 data: neither brackets nor a leading FNC1.`);
};

export interface ElementString {
  /** For people to read, as printed beside the symbol. */
  readonly bracketed: string;
  /** As a scanner sends it, without symbology identifier and leading FNC1. */
  readonly message: string;
}

/**
 * Writes elements as one string: those of fixed length first, so that as few separators as possible
 * are needed, and none after the last.
 */
export const writeElements = (
  elements: readonly Element[],
): Result<ElementString, IdentificationRefusal> => {
  for (const element of elements) {
    const checked = checkElement(element);
    if (!checked.ok) return checked;
  }
  const together = checkTogether(elements);
  if (!together.ok) return together;
  const ordered = [
    ...elements.filter(({ ai }) => !needsSeparator(ai)),
    ...elements.filter(({ ai }) => needsSeparator(ai)),
  ];
  const bracketed = ordered
    .map(({ ai, value }) => `(${ai})${value.replaceAll('(', '\\(')}`)
    .join('');
  const message = ordered
    .map(({ ai, value }, index) => {
      const isLast = index === ordered.length - 1;
      return ai + value + (!isLast && needsSeparator(ai) ? GROUP_SEPARATOR : '');
    })
    .join('');
  return ok({ bracketed, message });
};
