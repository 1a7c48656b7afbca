import { ok, refuse, type Result } from '../refusals/result';
import { applicationIdentifier } from './application-identifiers';
import { checkElement, checkTogether, type Element } from './element';
import type { IdentificationRefusal } from './refusals';
import { say, type Sentence } from '../words/say';

/** The resolver that GS1 runs; a workshop may use a domain of its own. */
export const GS1_STEM = 'https://id.gs1.org';

/** Keys that a path may begin with, each with its qualifiers in the only order allowed. */
const PATH_KEYS: ReadonlyMap<string, readonly string[]> = new Map([
  ['01', ['22', '10', '21']],
  ['00', []],
  ['8006', ['22', '10', '21']],
  ['414', ['254']],
]);

type Elements = Result<readonly Element[], IdentificationRefusal>;

const refuseLink = (detail: Sentence): Result<never, IdentificationRefusal> =>
  refuse({ code: 'digital-link-not-valid', detail });

/** Percent-encoding that also covers the marks of set 82 that `encodeURIComponent` leaves as is. */
const encode = (value: string): string =>
  encodeURIComponent(value).replace(
    /[!'()*]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  );

/** Writes a GS1 Digital Link URI: key and qualifiers in the path, the rest in the query. */
export const writeDigitalLink = (
  elements: readonly Element[],
  stem: string = GS1_STEM,
): Result<string, IdentificationRefusal> => {
  for (const element of elements) {
    const checked = checkElement(element);
    if (!checked.ok) return checked;
  }
  const key = [...PATH_KEYS.keys()].find((ai) => elements.some((element) => element.ai === ai));
  if (key === undefined)
    return refuseLink(say`A Digital Link needs a GTIN or another key to stand on.`);
  const together = checkTogether(elements);
  if (!together.ok) return together;
  const inPath = [key, ...(PATH_KEYS.get(key) ?? [])];
  const path = inPath
    .flatMap((ai) => elements.filter((element) => element.ai === ai).slice(0, 1))
    .map(({ ai, value }) => `/${ai}/${encode(value)}`)
    .join('');
  const query = elements
    .filter(({ ai }) => !inPath.includes(ai))
    .map(({ ai, value }) => `${ai}=${encode(value)}`)
    .join('&');
  return ok(`${stem.replace(/\/+$/, '')}${path}${query === '' ? '' : `?${query}`}`);
};

const decode = (text: string): string | undefined => {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
};

/** The path's pairs from its rightmost key on; a qualifier out of order or unknown ends the reading. */
const readPath = (segments: readonly string[]): Elements => {
  for (let at = segments.length - 2; at >= 0; at -= 2) {
    const qualifiers = PATH_KEYS.get(segments[at] ?? '');
    if (qualifiers === undefined) continue;
    const elements: Element[] = [];
    let next = 0;
    for (let pair = at; pair < segments.length; pair += 2) {
      const ai = segments[pair] ?? '';
      if (pair > at) {
        const place = qualifiers.indexOf(ai, next);
        if (place < 0)
          return refuseLink(say`/${ai.slice(0, 8)}/ can't stand at that place of the path.`);
        next = place + 1;
      }
      const value = decode(segments[pair + 1] ?? '');
      if (value === undefined) return refuseLink(say`The link has a broken percent sign.`);
      const element = checkElement({ ai, value });
      if (!element.ok) return refuseLink(element.refusal.detail);
      elements.push(element.value);
    }
    return ok(elements);
  }
  return refuseLink(say`The path names no GTIN or other GS1 key.`);
};

/** Attributes whose name is digits are GS1 data; all others (`?utm=…`) belong to the web page. */
const readQuery = (query: string): Elements => {
  const elements: Element[] = [];
  for (const attribute of query.split(/[&;]/).filter((part) => part !== '')) {
    const [ai = '', raw = ''] = attribute.split('=', 2);
    if (!/^[0-9]+$/.test(ai)) continue;
    if (applicationIdentifier(ai) === undefined) {
      return refuseLink(say`The link has a GS1 attribute ${ai.slice(0, 8)} that doesn't exist.`);
    }
    const value = decode(raw);
    if (value === undefined) return refuseLink(say`The link has a broken percent sign.`);
    const element = checkElement({ ai, value });
    if (!element.ok) return refuseLink(element.refusal.detail);
    elements.push(element.value);
  }
  return ok(elements);
};

const SHAPE = /^(?:https?|HTTPS?):\/\/([A-Za-z0-9.:-]+)((?:\/[^?#/]*)+)(?:\?([^#]*))?(?:#.*)?$/;

/** Whether a text looks like a web address at all. */
export const looksLikeLink = (text: string): boolean => /^https?:\/\//i.test(text);

/** Reads a GS1 Digital Link URI of any domain. GTINs in the path are 14 digits, as the standard asks. */
export const readDigitalLink = (uri: string): Elements => {
  const match = SHAPE.exec(uri);
  if (match === null) return refuseLink(say`It isn't a web address with a path of GS1 keys.`);
  const [, , path = '', query = ''] = match;
  const segments = path.slice(1).split('/');
  if (segments.length % 2 === 1 && segments[segments.length - 1] === '') segments.pop();
  const inPath = readPath(segments);
  if (!inPath.ok) return inPath;
  const inQuery = readQuery(query);
  if (!inQuery.ok) return inQuery;
  return checkTogether([...inPath.value, ...inQuery.value]);
};
