import { FRENCH } from '@api/domain/words/french';
import { spaced } from '@api/domain/words/french/spacing';
import { spaced as spacedOnScreen } from '../../apps/web/src/shared/language/french-spacing';
import { breaksFrenchSpacing, frenchOfPapers, frenchOfScreens } from '../support/french-texts';
import { sourceFiles } from '../support/source-tree';

describe('what is said in French', () => {
  it.each([
    ['pour une coque: 24', true],
    ['pour une coque : 24', true],
    ['pour une coque\u00a0: 24', false],
    ['Quoi\u202f?', false],
    ['Quoi?', true],
    ['{{day}}: {{what}}', true],
    ['12 %', true],
    ['12%', true],
    ['12\u00a0%', false],
    ['« oui »', true],
    ['«oui»', true],
    ['«\u00a0oui\u00a0»', false],
    ['à 10:30, https://exemple.invalid', false],
  ])('%s: a sign that isn’t set off, or by a space where a line may break: %s', (text, wrong) => {
    expect(breaksFrenchSpacing(text)).toBe(wrong);
  });

  it('sets its signs off on the screens', () => {
    const texts = frenchOfScreens();
    expect(texts.length).toBeGreaterThan(1000);
    // The catalogue makes each space before a sign one at which no line breaks.
    expect(texts.filter(({ text }) => breaksFrenchSpacing(spacedOnScreen(text)))).toEqual([]);
  });

  it('sets its signs off on papers', () => {
    const texts = frenchOfPapers();
    expect(texts.length).toBeGreaterThan(200);
    expect(texts.filter(({ text }) => breaksFrenchSpacing(spaced(text)))).toEqual([]);
  });

  it('sets its signs off in the sentences of the service', () => {
    const wrong = [...FRENCH.values()].filter(breaksFrenchSpacing);
    // The name of a header, as it is sent.
    expect(wrong.filter((text) => !text.includes('Content-Type:'))).toEqual([]);
  });
});

describe('a name and what it is', () => {
  // The colon belongs to the language: `formats.label` of the screens and `labelled` of the papers.
  it('are never joined by an English colon on a screen', () => {
    const joined = /\bt\((?:[^()]|\([^()]*\))*\)\}: ?/g;
    const found = sourceFiles(['apps/web/src'], /\.tsx?$/).flatMap(({ path, text }) =>
      [...text.matchAll(joined)].map(([sign]) => `${path}: ${sign}`),
    );
    expect(found).toEqual([]);
  });

  it('are never joined by an English colon on a paper', () => {
    const found = sourceFiles(['apps/api/src/documents'], /(?<!\.words)\.ts$/)
      // A label has the languages of its market, and words of its own.
      .filter(({ path }) => !path.includes('/documents/label/'))
      .flatMap(({ path, text }) =>
        [...text.matchAll(/\$\{[^}]+\}: /g)].map(([sign]) => `${path}: ${sign}`),
      );
    expect(found).toEqual([]);
  });
});
