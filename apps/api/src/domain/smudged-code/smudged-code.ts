export interface CodeMatch {
  readonly code: string;
  /** Zero is the code itself; one is one wrong, missing or surplus sign. */
  readonly distance: number;
}

/** Signs that print, hand and eye confuse: common practice, no source. */
const LOOK_ALIKES = [
  '0ODQ',
  '1IL7T',
  '2Z',
  '3B8',
  '4A',
  '5S',
  '6G',
  '9G',
  'UV',
  'MNW',
  'CG',
  'EF',
  'PR',
];

const LOOK_ALIKE = 0.25;
const UNREADABLE = 0.05;
const SWAPPED = 0.5;

/** What a person writes for a sign that can't be read. */
const UNREADABLE_SIGNS = new Set(['?', '*', '_', '.']);

/** Codes are compared without case, blanks and dashes: a smudge takes those first. */
const bare = (code: string): string[] => [
  ...code
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[\s\-–—/]/g, ''),
];

const substitution = (read: string, real: string): number => {
  if (read === real) return 0;
  if (UNREADABLE_SIGNS.has(read)) return UNREADABLE;
  const alike = LOOK_ALIKES.some((group) => group.includes(read) && group.includes(real));
  return alike ? LOOK_ALIKE : 1;
};

/** Edit distance in which look-alikes, unreadable signs and swapped neighbours cost less. */
const distanceBetween = (read: readonly string[], real: readonly string[]): number => {
  let beforePrevious: number[] = [];
  let previous = Array.from({ length: real.length + 1 }, (_, column) => column);
  for (const [row, sign] of read.entries()) {
    const current = [row + 1];
    for (const [column, other] of real.entries()) {
      let cost = Math.min(
        (previous[column] ?? 0) + substitution(sign, other),
        (previous[column + 1] ?? 0) + 1,
        (current[column] ?? 0) + 1,
      );
      const swapped = sign === real[column - 1] && read[row - 1] === other;
      if (swapped && sign !== other) {
        cost = Math.min(cost, (beforePrevious[column - 1] ?? Infinity) + SWAPPED);
      }
      current.push(cost);
    }
    beforePrevious = previous;
    previous = current;
  }
  return previous.at(-1) ?? 0;
};

/**
 * The codes that a code as read may stand for, nearest first. A person chooses: several lots may be
 * equally near, and none of them is taken for granted.
 */
export const smudgedCodeMatches = (
  read: string,
  codes: Iterable<string>,
  options: { readonly most?: number; readonly farthest?: number } = {},
): CodeMatch[] => {
  const signs = bare(read);
  const farthest = options.farthest ?? Math.min(2, signs.length / 3);
  const matches: CodeMatch[] = [];
  for (const code of codes) {
    const real = bare(code);
    if (Math.abs(real.length - signs.length) > farthest) continue;
    const distance = distanceBetween(signs, real);
    if (distance <= farthest) matches.push({ code, distance });
  }
  return matches
    .sort((a, b) => a.distance - b.distance || (a.code < b.code ? -1 : 1))
    .slice(0, options.most ?? 10);
};
