import { CATALOGUES, FRENCH } from '@api/domain/words/french';
import { ELEMENTS, MEASURE_FAMILIES } from '@api/domain/identification/application-identifier-data';
import { database } from '@api/domain/words/french/database';
import { gs1Elements } from '@api/domain/words/french/gs1-elements';
import { months } from '@api/domain/words/french/months';
import { words } from '@api/domain/words/french/words';
import { ALLERGENS, CHOCOLATE_KINDS, LANGUAGES } from '@api/domain/specification';
import { saidIn } from '../support/said-templates';
import { sourceFiles } from '../support/source-tree';

const sources = sourceFiles(['apps/api/src'], /(?<!\.spec)\.ts$/).filter(
  ({ path }) => !path.includes('/words/french/'),
);
const said = sources.flatMap(saidIn);
const saidOnce = new Set(said.map(({ english }) => english));
const slotsOf = (wording: string): string[] => [...(wording.match(/\{\d+\}/g) ?? [])].sort();

const quotedInSources = new Set(
  sources.flatMap(({ text }) => [...text.matchAll(/'([^'\n]+)'/g)].map(([, quoted]) => quoted)),
);
const migrations = sourceFiles(['prisma/migrations'], /\.sql$/)
  .map(({ text }) => text)
  .join('\n');

describe('what the service says', () => {
  it('finds the sentences of the source', () => {
    expect(saidOnce.size).toBeGreaterThan(700);
    expect(saidOnce).toContain('Lot {0} is on hold.');
    expect(saidOnce).toContain('recipe version');
  });

  it('has a French wording for each sentence and word', () => {
    expect(said.filter(({ english }) => !FRENCH.has(english))).toEqual([]);
  });

  it('has no French wording of what nobody says any more', () => {
    const sentences = CATALOGUES.filter(
      (one) => ![words, months, database, gs1Elements].includes(one),
    );
    const unsaid = sentences.flatMap((one) => Object.keys(one).filter((key) => !saidOnce.has(key)));
    expect(unsaid).toEqual([]);
    const unknown = Object.keys(words).filter(
      (word) =>
        !saidOnce.has(word) &&
        !quotedInSources.has(word.replaceAll(' ', '_')) &&
        !quotedInSources.has(word),
    );
    expect(unknown).toEqual([]);
    const untold = Object.keys(database).filter((text) => !migrations.includes(text.slice(1, -1)));
    expect(untold).toEqual([]);
  });

  it('names each GS1 element in French, and no other', () => {
    const titles = new Set([...ELEMENTS, ...MEASURE_FAMILIES].map(([, title]) => title));
    expect([...titles].sort()).toEqual(Object.keys(gs1Elements).sort());
  });

  it('puts each value of a sentence into its French wording, once', () => {
    const unlike = [...FRENCH].filter(
      ([english, french]) => slotsOf(english).join() !== slotsOf(french).join(),
    );
    expect(unlike).toEqual([]);
  });

  it('words each sentence in one place', () => {
    const keys = CATALOGUES.flatMap((one) => Object.keys(one));
    expect(keys.filter((key, place) => keys.indexOf(key) !== place)).toEqual([]);
  });

  it('knows the words of every closed list that sentences name', () => {
    const states = ['open', 'done', 'cancelled', 'finished', 'abandoned', 'frozen', 'closed'];
    const kinds = ['ingredient', 'packaging', 'filling', 'piece', 'box'];
    const roles = ['owner', 'maker', 'seller', 'auditor'];
    const named = [...ALLERGENS, ...CHOCOLATE_KINDS, ...LANGUAGES, ...states, ...kinds, ...roles];
    expect(named.filter((word) => !FRENCH.has(word))).toEqual([]);
  });

  it('is written as French is: curly apostrophes, and no sign that could begin a line', () => {
    const wrong = [...FRENCH.values()].filter((french) => /'| [:;?!»%]|« /.test(french));
    expect(wrong).toEqual([]);
  });
});
