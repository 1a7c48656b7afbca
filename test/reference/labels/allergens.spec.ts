import { containsLine } from '@api/domain/label/blocks';
import type { MarketCode } from '@api/domain/label';
import { textOf } from '@api/domain/declaration';
import { presenceOf, type AllergenOrigin, type IngredientNode } from '@api/domain/specification';
import { Decimal } from '@api/domain/units';
import { declarationOf, listOf } from '../../support/labels/written';
import {
  hazelnut,
  hazelnutGanache,
  lecithin,
  lot,
  milk,
  part,
  specify,
  wheat,
} from '../../support/labels/ingredients';

const allergensOf = (node: IngredientNode, market: MarketCode): readonly string[] =>
  declarationOf([lot(specify(node), 100)], { market }).allergens;

describe('Regulation (EU) No 1169/2011, Annex II and Article 21', () => {
  const syrup = part('glucose syrup', null, {
    origins: [{ ...wheat, exclusion: 'wheat_glucose_syrup' }],
  });

  it('1(a): glucose syrup from wheat, excluded, is listed without emphasis or allergen', () => {
    expect(listOf([lot(specify(syrup), 10)])).toBe('glucose syrup');
    expect(allergensOf(syrup, 'EU')).toEqual([]);
  });

  it('names the species: wheat starch', () => {
    expect(listOf([lot(specify(part('wheat starch', null, { origins: [wheat] })), 10)])).toBe(
      '**wheat** starch',
    );
  });

  it.each([
    ['spelt flour', 'wheat', 'spelt flour (**wheat**)'],
    ['khorasan semolina', 'wheat', 'khorasan semolina (**wheat**)'],
    ['malt extract', 'barley', 'malt extract (**barley**)'],
    ['oat flakes', 'oats', '**oat** flakes'],
  ] as const)('1: %s says its cereal', (name, allergen, expected) => {
    expect(listOf([lot(specify(part(name, null, { origins: [{ allergen }] })), 10)])).toBe(
      expected,
    );
  });

  it('soya lecithin is not excluded, by name and by number', () => {
    const lots = [lot(specify({ ...lecithin('1'), percent: null }), 1)];
    expect(listOf(lots)).toBe('emulsifier: **soya** lecithins');
    expect(listOf(lots, { eNumbers: true })).toBe('emulsifier: E322 (**soya**)');
  });

  it('7(b): lactitol is excluded from milk', () => {
    const lactitol = part('lactitol', null, { origins: [{ ...milk, exclusion: 'lactitol' }] });
    expect(allergensOf(lactitol, 'EU')).toEqual([]);
  });

  it('8: almond is a nut of the list, coconut is not', () => {
    const praline = part('praline', null, {
      parts: [
        part('almonds', '60', { origins: [{ allergen: 'almond' }] }),
        part('coconut', '40', { origins: [{ allergen: 'coconut' }] }),
      ],
    });
    expect(listOf([lot(specify(praline), 10)])).toBe('praline (**almonds**, coconut)');
    expect(allergensOf(praline, 'EU')).toEqual(['almond']);
  });

  it('10, as amended by Delegated Regulation (EU) 2024/2512: behenic acid from mustard', () => {
    const emulsifier = part('mono- and diglycerides of fatty acids', null, {
      additive: { functionalClass: 'emulsifier', eNumber: 'E471', carriedOver: false },
      origins: [{ allergen: 'mustard', exclusion: 'mustard_behenic_acid' }],
    });
    expect(allergensOf(emulsifier, 'EU')).toEqual([]);
    expect(allergensOf(emulsifier, 'NI')).toEqual([]);
    expect(allergensOf(emulsifier, 'GB')).toEqual(['mustard']);
  });

  it('1(d): a spirit distilled from barley holds no gluten', () => {
    const whisky = part('whisky', null, {
      origins: [{ allergen: 'barley', exclusion: 'cereal_distillate' }],
      flags: { volatile: true },
    });
    expect(listOf([lot(specify(whisky), 10)])).toBe('whisky');
  });

  it('an exclusion that does not cover the allergen excludes nothing', () => {
    const odd = part('milk syrup', null, {
      origins: [{ ...milk, exclusion: 'wheat_glucose_syrup' }],
    });
    const declared = declarationOf([lot(specify(odd), 10)]);
    expect(declared.allergens).toEqual(['milk']);
    expect(declared.findings.map((entry) => entry.code)).toEqual(['exclusion-mismatch']);
  });

  it('an unknown allergen keeps the list back; silence is unknown', () => {
    const silent = { ...specify(part('paste')), allergens: {} };
    expect(presenceOf(silent.allergens, 'peanut')).toBe('unknown');
    const [finding] = declarationOf([lot(silent, 10)]).findings;
    expect(finding).toMatchObject({ severity: 'refusal', code: 'allergen-unknown' });
  });
});

describe('Annex II, point 12: sulphites in the food as ready to eat', () => {
  const peel = (mgPerKg: string) => specify(part('candied peel'), { sulphiteMgPerKg: new Decimal(mgPerKg) }); // prettier-ignore
  const glucose = specify(part('glucose syrup'), { sulphiteMgPerKg: new Decimal(20) });
  const rest = specify(part('sugar'));

  it('100 mg/kg at 8 % and 20 mg/kg at 15 % make 11 mg/kg: declared', () => {
    const lots = [lot(peel('100'), 80), lot(glucose, 150), lot(rest, 770)];
    expect(declarationOf(lots).sulphites.mgPerKg.toString()).toBe('11');
    expect(listOf(lots)).toBe('sugar, glucose syrup (**sulphites**), candied peel (**sulphites**)');
  });

  it('exactly 10 mg/kg is not more than 10: declared in the United States (from memory) only', () => {
    const lots = [lot(peel('125'), 80), lot(rest, 920)];
    expect(declarationOf(lots).sulphites.mgPerKg.toString()).toBe('10');
    expect(declarationOf(lots).allergens).toEqual([]);
    expect(declarationOf(lots, { market: 'US' }).allergens).toEqual(['sulphites']);
  });

  it('contained but not measured counts as declared', () => {
    const unmeasured = specify(part('dried fruit', null, { origins: [{ allergen: 'sulphites' }] }));
    expect(listOf([lot(unmeasured, 1), lot(rest, 999)])).toBe('sugar, dried fruit (**sulphites**)');
  });
});

describe('Food Allergen Labeling and Consumer Protection Act and FASTER Act (from memory)', () => {
  const contains = (lots: Parameters<typeof declarationOf>[0]): string =>
    containsLine(declarationOf(lots, { market: 'US' }))
      .map((block) => textOf(block.runs))
      .join(' ');

  it('names all after "Contains", wheat too unless the syrup is certified free of its protein', () => {
    expect(contains(hazelnutGanache())).toBe('Contains: Milk, Hazelnuts, Wheat, Soy.');
    const certified = hazelnutGanache().map((entry) =>
      entry.itemId === 'glucose syrup'
        ? lot(
            specify(part('glucose syrup', null, { origins: [{ ...wheat, freeOfProtein: true }] })),
            80,
          )
        : entry,
    );
    expect(contains(certified)).toBe('Contains: Milk, Hazelnuts, Soy.');
  });

  it('sesame counts since 2023', () => {
    const bar = part('bar', null, {
      origins: [{ allergen: 'almond' }, { allergen: 'sesame' }],
    });
    expect(contains([lot(specify(bar), 10)])).toBe('Contains: Almonds, Sesame.');
  });

  it('barley malt is none of the nine', () => {
    const malt = part('barley malt extract', null, { origins: [{ allergen: 'barley' }] });
    expect(contains([lot(specify(malt), 10)])).toBe('');
    expect(allergensOf(malt, 'EU')).toEqual(['barley']);
  });

  it('the list itself carries no emphasis and uses the American names', () => {
    expect(listOf(hazelnutGanache(), { market: 'US', finishedG: 1000 })).toBe(
      'dark chocolate (cocoa mass, sugar, cocoa butter, soy lecithin), cream, hazelnuts, ' +
        'glucose syrup, butter, rum, contains 2% or less of: vanilla extract',
    );
  });
});

describe('emphasis in six languages (Commission Notice 2017/C 428/01, by a translated copy)', () => {
  const nut = (names: IngredientNode['names'], origin: AllergenOrigin) =>
    lot(specify(part('x', null, { names, origins: [origin] })), 10);

  it.each([
    ['en', 'skimmed milk powder', milk, 'skimmed **milk** powder'],
    ['de', 'Magermilchpulver', milk, 'Mager**milch**pulver'],
    ['nl', 'magere melkpoeder', milk, 'magere **melk**poeder'],
    ['fr', 'lait écrémé en poudre', milk, '**lait** écrémé en poudre'],
    ['it', 'latte scremato in polvere', milk, '**latte** scremato in polvere'],
    ['es', 'leche desnatada en polvo', milk, '**leche** desnatada en polvo'],
    ['fr', 'crème', milk, 'crème (**lait**)'],
    ['fr', 'noix de coco', { allergen: 'walnut' }, 'noix de coco (**noix**)'],
    ['fr', 'noix de cajou', { allergen: 'cashew' }, '**noix de cajou**'],
    ['de', 'Haselnüsse', hazelnut, '**Haselnüsse**'],
    ['it', 'nocciole tostate', hazelnut, '**nocciole** tostate'],
    ['en', 'coconut milk', { allergen: 'almond' }, 'coconut milk (**almond**)'],
  ] as const)('%s: %s', (language, name, origin, expected) => {
    expect(listOf([nut({ [language]: name }, origin)], { language })).toBe(expected);
  });
});
