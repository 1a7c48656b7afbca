import { isDeclared, originsWithin } from '@api/domain/allergens';
import {
  quantify,
  writeDeclaration,
  type IngoingLot,
  type Interchangeable,
} from '@api/domain/declaration';
import type { MarketCode } from '@api/domain/label';
import { composeLabel } from '@api/domain/label';
import { MARKETS } from '@api/domain/market';
import {
  EXCLUSIONS,
  GROUP_KINDS,
  LANGUAGES,
  type Allergen,
  type IngredientNode,
} from '@api/domain/specification';
import { Decimal, sum } from '@api/domain/units';
import { wordsIn } from '@api/domain/words';
import fc from 'fast-check';
import { ask, settings } from '../../support/labels/ask';
import { declarationOf } from '../../support/labels/written';
import { lot, part, specify } from '../../support/labels/ingredients';

const SOURCES: readonly Allergen[] = [
  'wheat', 'barley', 'egg', 'fish', 'peanut', 'soy', 'milk', 'almond', 'hazelnut', 'walnut',
  'cashew', 'pistachio', 'celery', 'mustard', 'sesame', 'lupin', 'molluscs', 'crustaceans',
]; // prettier-ignore

const WORDS = ['sugar', 'milk powder', 'hazelnut paste', 'syrup', 'cocoa mass', 'butter', 'cream', 'whisky', 'malt', 'noix', 'ei', 'x'] as const; // prettier-ignore

const names = fc
  .constantFrom(...WORDS)
  .map((word) => Object.fromEntries(LANGUAGES.map((language) => [language, word])));

const origin = fc.record(
  { allergen: fc.constantFrom(...SOURCES), exclusion: fc.constantFrom(...EXCLUSIONS) },
  { requiredKeys: ['allergen'] },
);

const flags = fc.record(
  {
    volatile: fc.boolean(), addedWater: fc.boolean(), definedInUnionLaw: fc.boolean(),
    needsNoList: fc.boolean(), processingAid: fc.boolean(), characterises: fc.boolean(),
    varyingProportions: fc.boolean(),
  },
  { requiredKeys: [] },
); // prettier-ignore

/** Compounds up to three deep; percentages come from shares, so that they never pass 100. */
const node = (depth: number): fc.Arbitrary<IngredientNode> =>
  fc
    .record({
      names,
      flags,
      origins: fc.array(origin, { maxLength: 2 }),
      carriedOver: fc.boolean(),
      additive: fc.boolean(),
      group: fc.option(fc.constantFrom(...GROUP_KINDS)),
      parts:
        depth === 0
          ? fc.constant<IngredientNode[]>([])
          : fc.array(node(depth - 1), { maxLength: 2 }),
    })
    .map(({ carriedOver, additive, group, parts, ...rest }) => ({
      ...part('', null),
      ...rest,
      ...(group === null ? {} : { group: { kind: group, memberNames: null } }),
      ...(additive
        ? { additive: { functionalClass: 'emulsifier' as const, eNumber: 'E471', carriedOver } }
        : {}),
      parts: parts.map((entry) => ({
        ...entry,
        percent: new Decimal(100).dividedBy(parts.length),
      })),
    }));

/** Added water as such has no allergens: what is left out of the list must not take one along. */
const lots: fc.Arbitrary<IngoingLot[]> = fc.array(
  fc.record({ node: node(2), grams: fc.integer({ min: 0, max: 5000 }), via: fc.constantFrom('draw' as const, 'heel' as const, 'rework' as const), processingAid: fc.boolean() }),
  { minLength: 1, maxLength: 5 },
).map((entries) =>
  entries.map((entry, index) => lot(specify(entry.node), entry.grams, { ...entry, lotId: String(index), itemId: String(index) })),
); // prettier-ignore

const box = fc.record({
  lots: lots.filter((entries) => entries.some((entry) => entry.ingoingG.greaterThan(0))),
  market: fc.constantFrom<MarketCode>('EU', 'GB', 'NI', 'US'),
  listForm: fc.constantFrom('nested' as const, 'flattened' as const),
  language: fc.constantFrom(...LANGUAGES),
  lossPercent: fc.integer({ min: 0, max: 30 }),
});

const finishedOf = (entries: readonly IngoingLot[], lossPercent: number): Decimal =>
  sum(entries.map((entry) => entry.ingoingG)).times(100 - lossPercent).dividedBy(100); // prettier-ignore

/** Every two neighbours of a box, offered as if they could replace each other. */
const pairsOf = (entries: readonly IngoingLot[]): Interchangeable[] =>
  entries.slice(1).flatMap((entry, index) => {
    const before = entries[index];
    return before ? [[before, entry] as const] : [];
  });

const declaredIn = (entries: readonly IngoingLot[], market: MarketCode): Set<Allergen> =>
  new Set(
    entries
      .flatMap((entry) => (entry.specification ? originsWithin(entry.specification.ingredient) : []))
      .filter((found) => isDeclared(found, MARKETS[market]))
      .map((found) => found.allergen),
  ); // prettier-ignore

describe('10 000 random boxes', () => {
  it('no allergen of any lot inside is ever absent from the label', () => {
    fc.assert(
      fc.property(box, ({ lots: inside, market, listForm, language, lossPercent }) => {
        const languages = language === 'en' ? [language] : (['en', language] as const);
        const asked = ask(inside, market, {
          languages,
          mix: { lots: inside, finishedG: finishedOf(inside, lossPercent) },
          settings: settings({
            listForm,
            groups: { kinds: new Set(GROUP_KINDS), oilsVary: listForm === 'nested' },
            interchangeable: pairsOf(inside),
            names: Object.fromEntries(LANGUAGES.map((entry) => [entry, 'Box'])),
          }),
        });
        const { content, findings } = composeLabel(asked);
        expect(content === null ? findings : []).toEqual([]);
        for (const spoken of languages) {
          const printed = (content?.blocks ?? [])
            .filter((block) => block.language === spoken)
            .flatMap((block) => block.runs)
            .filter((run) => market === 'US' || run.emphasis === 'allergen')
            .map((run) => run.text.toLowerCase())
            .join(' | ');
          for (const allergen of declaredIn(inside, market)) {
            if (market === 'US' && spoken !== 'en') continue;
            expect(printed).toContain(stem(allergen, spoken, market));
          }
        }
      }),
      { numRuns: 10_000, seed: 20261125 },
    );
  }, 300_000);

  it('the order never contradicts the weights, and the list never loses a gram', () => {
    fc.assert(
      fc.property(box, ({ lots: inside, market, listForm, lossPercent }) => {
        const finishedG = finishedOf(inside, lossPercent);
        const { places, request } = declarationOf(inside, { market, listForm, finishedG: finishedG.toString() }); // prettier-ignore
        for (const group of [true, false]) {
          const ranks = places
            .filter((place) => place.inTail === group)
            .map((place) => place.rankG);
          const sorted = [...ranks].sort((a, b) => b.comparedTo(a));
          expect(ranks.map(String)).toEqual(sorted.map(String));
        }
        const [heavy, light] = [places.filter((p) => !p.inTail), places.filter((p) => p.inTail)];
        const lightest = heavy.at(-1)?.rankG;
        const heaviest = light[0]?.rankG;
        if (lightest && heaviest) expect(lightest.greaterThanOrEqualTo(heaviest)).toBe(true);
        const dry = sum(places.filter((p) => !p.entry.node.flags.addedWater).map((p) => p.entry.ingoingG ?? new Decimal(0))); // prettier-ignore
        const poured = listForm === 'flattened' ? null : inside.filter((l) => !l.specification?.ingredient.flags.addedWater); // prettier-ignore
        if (poured) expect(dry.toFixed(6)).toBe(sum(poured.map((l) => l.ingoingG)).toFixed(6));
        expect(request.mix.finishedG.toString()).toBe(finishedG.toString());
      }),
      { numRuns: 10_000, seed: 20261126 },
    );
  }, 300_000);

  it('declared percentages keep their sum: never above 100, never a step away from the truth', () => {
    const weights = fc.array(fc.integer({ min: 1, max: 9999 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(weights, fc.integer({ min: 1, max: 20_000 }), (grams, finished) => {
        const named = grams.map((g, index) => ({ id: String(index), weightG: new Decimal(g) }));
        const exactSum = sum(named.map((entry) => entry.weightG))
          .times(100)
          .dividedBy(finished);
        const quid = quantify(named, new Decimal(finished));
        expect(quid.form).toBe(exactSum.greaterThan(100) ? 'grams_per_100_g' : 'percent');
        if (quid.form !== 'percent') return;
        expect(sum(quid.figures.values()).lessThanOrEqualTo(100)).toBe(true);
        for (const { id, weightG } of named) {
          const exact = weightG.times(100).dividedBy(finished);
          const shown = quid.figures.get(id) ?? new Decimal(-1);
          expect(shown.greaterThan(0)).toBe(true);
          expect(shown.minus(exact).abs().lessThan(1)).toBe(true);
        }
      }),
      { numRuns: 10_000, seed: 20261127 },
    );
  }, 300_000);
});

/** The word that must be read; the American label uses its own forms after "Contains". */
const stem = (
  allergen: Allergen,
  language: (typeof LANGUAGES)[number],
  market: MarketCode,
): string =>
  market === 'US' && allergen === 'soy'
    ? 'soy'
    : wordsIn(language).allergens[allergen].toLowerCase();

it('writes in every language without a missing name', () => {
  const nut = part('x', null, { names: { en: 'a', fr: 'b', de: 'c', nl: 'd', it: 'e', es: 'f' } });
  for (const language of LANGUAGES) {
    const written = writeDeclaration(declarationOf([lot(specify(nut), 1)]), language, 'name');
    expect(written.nameless).toEqual([]);
  }
});
