import { mentionOf } from '../allergens';
import type { TextRun } from '../label/content';
import type { Allergen, Language } from '../specification';
import { wordsIn } from '../words';

export const plain = (text: string): TextRun => ({ text, emphasis: 'none' });

/** Joins neighbours of one look, so that a list reads as few runs. */
export const tidyRuns = (runs: readonly TextRun[]): TextRun[] => {
  const tidy: TextRun[] = [];
  for (const run of runs) {
    const last = tidy.at(-1);
    if (last?.emphasis === run.emphasis)
      tidy[tidy.length - 1] = { ...run, text: last.text + run.text };
    else if (run.text !== '') tidy.push(run);
  }
  return tidy;
};

export const textOf = (runs: readonly TextRun[]): string => runs.map((run) => run.text).join('');

/**
 * A name with its allergens emphasised: inside the name where the name says them, in brackets after
 * it where it doesn't ("butter (milk)"), which is the safe form also for cream and cheese.
 */
export const emphasise = (
  name: string,
  allergens: readonly Allergen[],
  language: Language,
): TextRun[] => {
  const marks = new Array<boolean>(name.length).fill(false);
  const unnamed: Allergen[] = [];
  for (const allergen of allergens) {
    const match = mentionOf(allergen, language).exec(name);
    if (match?.[0]) marks.fill(true, match.index, match.index + match[0].length);
    else unnamed.push(allergen);
  }
  const runs = [...name].length === 0 ? [] : cut(name, marks);
  if (unnamed.length === 0) return runs;
  return [...runs, plain(' ('), ...listed(unnamed, language), plain(')')];
};

const cut = (name: string, marks: readonly boolean[]): TextRun[] => {
  const runs: TextRun[] = [];
  let start = 0;
  for (let end = 1; end <= name.length; end += 1) {
    if (end < name.length && marks[end] === marks[start]) continue;
    runs.push({ text: name.slice(start, end), emphasis: marks[start] ? 'allergen' : 'none' });
    start = end;
  }
  return runs;
};

/** Allergen names in a row, each emphasised. */
export const listed = (allergens: readonly Allergen[], language: Language): TextRun[] =>
  allergens.flatMap((allergen, index): TextRun[] => [
    ...(index === 0 ? [] : [plain(', ')]),
    { text: wordsIn(language).allergens[allergen], emphasis: 'allergen' },
  ]);
