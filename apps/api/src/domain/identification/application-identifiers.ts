import type { CharacterSet } from './character-sets';
import { ELEMENTS, MEASURE_FAMILIES, type ElementRow } from './application-identifier-data';

/** What a component's content must be, beyond its characters and length. */
export type ContentRule = 'check-digit' | 'date' | 'country' | 'currency';

export interface ElementPart {
  readonly set: CharacterSet;
  readonly min: number;
  readonly max: number;
  readonly rule?: ContentRule;
}

export interface ApplicationIdentifier {
  readonly ai: string;
  readonly title: string;
  readonly parts: readonly ElementPart[];
  /** Each group asks for at least one of its identifiers to stand beside this one. */
  readonly needs: readonly (readonly string[])[];
  /** Identifiers that may not stand beside this one. A trailing n stands for any digit. */
  readonly excludes: readonly string[];
}

/**
 * First two digits of the elements of pre-defined length: no FNC1 follows them (GS1 General
 * Specifications, figure 7.8.5-2). The rule looks at these two digits only, so (410) needs no
 * separator and (37), although all digits, does.
 */
const PREDEFINED_LENGTH: ReadonlySet<string> = new Set([
  ...['00', '01', '02', '03', '04'],
  ...['11', '12', '13', '14', '15', '16', '17', '18', '19', '20'],
  ...['31', '32', '33', '34', '35', '36', '41'],
]);

export const needsSeparator = (ai: string): boolean => !PREDEFINED_LENGTH.has(ai.slice(0, 2));

const RULE_MARKS: Readonly<Record<string, ContentRule>> = {
  '#': 'check-digit',
  d: 'date',
  '@': 'country',
  $: 'currency',
};

/** Reads one component as `N14#`, `X..20` or, when it may be left off, `[N4]`. */
const readPart = (text: string): ElementPart => {
  const match = /^(\[?)([NXY])(\.\.)?([0-9]+)([#d@$]?)\]?$/.exec(text);
  if (match === null) throw new Error(`The table of elements has a part that reads ${text}`);
  const [, optional = '', set = 'X', upTo, digits = '0', mark = ''] = match;
  const max = Number(digits);
  const min = optional !== '' ? 0 : upTo === undefined ? max : 1;
  const rule = RULE_MARKS[mark];
  const part = { set: set as CharacterSet, min, max };
  return rule === undefined ? part : { ...part, rule };
};

const readRow = ([
  ai,
  title,
  format,
  needs = '',
  excludes = '',
]: ElementRow): ApplicationIdentifier => ({
  ai,
  title,
  parts: format.split('+').map(readPart),
  needs: needs
    .split('+')
    .filter((group) => group !== '')
    .map((group) => group.trim().split(' ')),
  excludes: excludes === '' ? [] : excludes.split(' '),
});

const expandRange = (row: ElementRow): ElementRow[] => {
  const [first, last] = row[0].split('-');
  if (first === undefined || last === undefined) return [row];
  const rows: ElementRow[] = [];
  for (let ai = Number(first); ai <= Number(last); ai += 1) {
    rows.push([String(ai), row[1], row[2], row[3] ?? '', row[4] ?? '']);
  }
  return rows;
};

const measureRows = (): ElementRow[] =>
  MEASURE_FAMILIES.flatMap(([families, title, needs]) =>
    families
      .split(' ')
      .flatMap((family) =>
        expandRange([`${family}0-${family}5`, title, 'N6', needs, `${family}n`]),
      ),
  );

const byAi: ReadonlyMap<string, ApplicationIdentifier> = new Map(
  [...ELEMENTS, ...measureRows()]
    .flatMap(expandRange)
    .map(readRow)
    .map((entry) => [entry.ai, entry]),
);

export const applicationIdentifier = (ai: string): ApplicationIdentifier | undefined =>
  byAi.get(ai);

/** The identifier that `text` begins with: 2 to 4 digits; no identifier is the start of another. */
export const identifierAt = (text: string): ApplicationIdentifier | undefined =>
  byAi.get(text.slice(0, 2)) ?? byAi.get(text.slice(0, 3)) ?? byAi.get(text.slice(0, 4));

/** Whether `ai` is named by a pattern such as `01` or `31nn`. */
export const matchesPattern = (ai: string, pattern: string): boolean =>
  ai.length === pattern.length && [...pattern].every((mark, at) => mark === 'n' || mark === ai[at]);
