import { textOf } from '@api/domain/declaration';
import { composeLabel, type LabelSettings } from '@api/domain/label';
import { ask, settings } from '../../support/labels/ask';
import { hazelnutGanache, lot, part, specify } from '../../support/labels/ingredients';

/*
 * Source: Implementing Regulation (EU) 2018/775, Articles 2 and 3, with Regulation (EU) No 1169/2011,
 * Articles 2(2)(q) and 26(3), as published summaries of the acts give them.
 */

const given = (
  primaryOrigin: LabelSettings['primaryOrigin'],
  market: 'EU' | 'GB' | 'NI' | 'US' = 'EU',
  lots = hazelnutGanache(),
) => {
  const origin = { en: 'Made in Examplia' };
  return composeLabel(ask(lots, market, { settings: settings({ origin, primaryOrigin }) }));
};
const refusals = (label: ReturnType<typeof given>): string[] =>
  label.findings.filter(({ severity }) => severity === 'refusal').map(({ code }) => code);
const originOf = (label: ReturnType<typeof given>): string[] =>
  (label.content?.blocks ?? [])
    .filter(({ kind }) => kind === 'origin')
    .map(({ runs }) => textOf(runs));

describe('an origin that is given for the food', () => {
  it.each(['EU', 'GB', 'NI'] as const)(
    'asks for that of the primary ingredient in %s',
    (market) => {
      const label = given({ state: 'unset', text: null }, market);
      expect(refusals(label)).toEqual(['primary-origin-unset']);
      expect(label.content).toBe(null);
    },
  );

  it('asks nothing where no origin is given, nor in the United States', () => {
    expect(composeLabel(ask(hazelnutGanache())).content).not.toBe(null);
    expect(refusals(given({ state: 'unset', text: null }, 'US'))).toEqual([]);
  });

  it('names the ingredients that are over half of the food', () => {
    const bar = [lot(specify(part('cocoa mass')), 70), lot(specify(part('sugar')), 30)];
    const found = given({ state: 'unset', text: null }, 'EU', bar).findings;
    expect(found.find(({ code }) => code === 'primary-origin-unset')?.facts).toEqual({
      ingredients: ['cocoa mass'],
    });
  });

  it('stands alone when both are the same', () => {
    expect(originOf(given({ state: 'same', text: null }))).toEqual(['Made in Examplia']);
  });

  it('has the other origin beside it, in one paragraph and so in one size, when they differ', () => {
    const label = given({ state: 'differs', text: { en: 'The cocoa does not originate from Examplia' } }); // prettier-ignore
    expect(originOf(label)).toEqual([
      'Made in Examplia. The cocoa does not originate from Examplia',
    ]);
  });

  it('is refused while the sentence on the other origin is missing in a language', () => {
    expect(refusals(given({ state: 'differs', text: { fr: 'Cacao du Nullepart' } }))).toEqual([
      'primary-origin-missing',
    ]);
  });
});
