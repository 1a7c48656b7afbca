import { flavouringName, quantify } from '@api/domain/declaration';
import { MARKETS } from '@api/domain/market';
import { besideTheName, childrenWarning, liquoriceFacts, liquoriceStatement, sweetenerFacts, sweetenerStatements } from '@api/domain/statements'; // prettier-ignore
import type { FunctionalClass, IngredientNode } from '@api/domain/specification';
import { Decimal } from '@api/domain/units';
import { declarationOf, listOf } from '../../support/labels/written';
import { hazelnutGanache, lot, part, specify } from '../../support/labels/ingredients';

const percent = (weightG: number, finishedG: number): string | undefined =>
  quantify([{ id: 'a', weightG: new Decimal(weightG) }], new Decimal(finishedG))
    .figures.get('a')
    ?.toString();

describe('quantity of an ingredient: Regulation (EU) No 1169/2011, Article 22 and Annex VIII', () => {
  it('200 g sultanas baked with 800 g dough to 800 g: 25 % (a council’s published leaflet)', () => {
    expect(percent(200, 800)).toBe('25');
  });

  it('150 g hazelnuts in 1000 g finished ganache: 15 %', () => {
    expect(listOf(hazelnutGanache(), { finishedG: 1000, quantified: ['hazelnuts'] })).toContain(
      '**hazelnuts** 15%, glucose syrup',
    );
    expect(percent(150, 1020)).toBe('15');
  });

  it('above 100 % the weight for 100 g of product replaces the percentage', () => {
    const puree = [lot(specify(part('raspberry purée')), 1200, { massG: new Decimal(1000) })];
    const declared = declarationOf(puree, { finishedG: 1000, quantified: ['raspberry purée'] });
    expect(declared.quidGrams.map(({ grams }) => grams.toString())).toEqual(['120']);
    expect(declared.quidPercent.size).toBe(0);
  });

  it('two figures that pass 100 % together are both in grams', () => {
    const two = [
      { id: 'a', weightG: new Decimal(600) },
      { id: 'b', weightG: new Decimal(500) },
    ];
    expect(quantify(two, new Decimal(1000)).form).toBe('grams_per_100_g');
  });

  it('a flavouring use needs none (Annex VIII, point 1(a)(iii))', () => {
    expect(
      listOf(hazelnutGanache(), { finishedG: 1000, quantified: ['vanilla extract'] }),
    ).not.toContain('%');
  });

  it('half steps below five per cent (guidance, from memory)', () => {
    expect(percent(46, 1000)).toBe('4.5');
    expect(percent(48, 1000)).toBe('5');
    expect(percent(1, 1000)).toBe('0.1');
  });

  it('the figure is written in the manner of the language', () => {
    const lots = [
      lot(specify(part('x', null, { names: { fr: 'miel' } })), 25, { itemId: 'miel' }),
      lot(specify(part('x', null, { names: { fr: 'sucre' } })), 975),
    ];
    expect(listOf(lots, { language: 'fr', quantified: ['miel'] })).toBe('sucre, miel 2,5\u00a0%');
  });
});

const sweet = (polyol: string, sugar: string) => {
  const maltitol = part('maltitol', null, {
    additive: { functionalClass: 'sweetener', eNumber: 'E965', carriedOver: false },
    flags: { polyol: true },
  });
  const mix = {
    lots: [
      lot(specify(maltitol), polyol),
      lot(specify(part('sugar', null, { flags: { sugar: true } })), sugar),
      lot(specify(part('cocoa mass')), new Decimal(100).minus(polyol).minus(sugar).toString()),
    ].filter((entry) => entry.ingoingG.greaterThan(0)),
    finishedG: new Decimal(100),
  };
  const facts = sweetenerFacts(mix);
  return {
    beside: besideTheName(facts, MARKETS.EU, 'en'),
    below: sweetenerStatements(facts, MARKETS.EU, 'en'),
  };
};

describe('statements: Regulation (EU) No 1169/2011, Annex III', () => {
  it('10.0 % polyol is not more than ten: the sweetener line alone', () => {
    expect(sweet('10.0', '0')).toEqual({ beside: 'with sweetener(s)', below: [] });
  });

  it('10.1 % polyol beside sugar: both lines', () => {
    expect(sweet('10.1', '20')).toEqual({
      beside: 'with sugar(s) and sweetener(s)',
      below: ['Excessive consumption may produce laxative effects'],
    });
  });

  it('aspartame: the statement on phenylalanine, in the market that asks for it', () => {
    const aspartame = part('aspartame', null, {
      additive: { functionalClass: 'sweetener', eNumber: 'E951', carriedOver: false },
      flags: { aspartame: true },
    });
    const facts = sweetenerFacts({
      lots: [lot(specify(aspartame), 1)],
      finishedG: new Decimal(100),
    });
    expect(sweetenerStatements(facts, MARKETS.EU, 'en')).toEqual([
      'Contains a source of phenylalanine',
    ]);
    expect(sweetenerStatements(facts, MARKETS.US, 'en')).toEqual([]);
  });

  const liquorice = (mgPerKg: string, named: boolean): string | null => {
    const node = part('root extract', null, { flags: { liquorice: named } });
    const specification = specify(node, { glycyrrhizinicMgPerKg: new Decimal(mgPerKg) });
    const mix = { lots: [lot(specification, 100)], finishedG: new Decimal(100) };
    return liquoriceStatement(liquoriceFacts(mix), MARKETS.EU, 'en');
  };

  it('liquorice: from 100 mg/kg named once, from 4 g/kg with the blood-pressure warning', () => {
    expect(liquorice('99', false)).toBe(null);
    expect(liquorice('100', false)).toBe('Contains liquorice');
    expect(liquorice('100', true)).toBe(null);
    expect(liquorice('4000', true)).toContain('hypertension');
  });
});

describe('colours: Regulation (EC) No 1333/2008, Article 24 and Annex V; Regulation (EU) 2022/63', () => {
  const butter = (name: string, eNumber: string): IngredientNode =>
    part('coloured cocoa butter', null, {
      parts: [
        part('cocoa butter', '90'),
        part(name, '10', { additive: { functionalClass: 'colour', eNumber, carriedOver: false } }),
      ],
    });
  const mixOf = (node: IngredientNode) => ({
    lots: [lot(specify(node), 5), lot(specify(part('chocolate')), 95)],
    finishedG: new Decimal(100),
  });

  it('E129 on the shell: in the list, and the warning', () => {
    const mix = mixOf(butter('allura red AC', 'E129'));
    expect(listOf(mix.lots, { eNumbers: true })).toBe(
      'chocolate, coloured cocoa butter (cocoa butter, colour: E129)',
    );
    expect(childrenWarning(mix, MARKETS.EU, 'en', 'e_number')).toBe(
      'E129: may have an adverse effect on activity and attention in children',
    );
  });

  it('carmines alone: in the list, no warning', () => {
    const mix = mixOf(butter('carmines', 'E120'));
    expect(listOf(mix.lots)).toContain('colour: carmines');
    expect(childrenWarning(mix, MARKETS.EU, 'en', 'name')).toBe(null);
  });

  it.each([
    ['EU', true],
    ['NI', true],
    ['GB', false],
  ] as const)('titanium dioxide in %s: banned is %s (GB and NI from memory)', (market, banned) => {
    const { findings } = declarationOf(mixOf(butter('titanium dioxide', 'E171')).lots, { market });
    expect(findings.some((entry) => entry.code === 'additive-banned')).toBe(banned);
  });
});

describe('additives: Regulation (EU) No 1169/2011, Annex VII Part C and Article 20 (from memory)', () => {
  const additive = (
    name: string,
    functionalClass: FunctionalClass,
    eNumber: string | null,
    carriedOver = false,
  ) => lot(specify(part(name, null, { additive: { functionalClass, eNumber, carriedOver } })), 1);

  it.each([
    ['pectins', 'gelling_agent', 'E440', 'gelling agent: pectins', 'gelling agent: E440'],
    ['citric acid', 'acid', 'E330', 'acid: citric acid', 'acid: E330'],
    ['shellac', 'glazing_agent', 'E904', 'glazing agent: shellac', 'glazing agent: E904'],
    [
      'potassium sorbate',
      'preservative',
      'E202',
      'preservative: potassium sorbate',
      'preservative: E202',
    ],
    ['glycerol', 'humectant', 'E422', 'humectant: glycerol', 'humectant: E422'],
    ['invertase', 'stabiliser', 'E1103', 'stabiliser: invertase', 'stabiliser: E1103'],
    [
      'acetylated distarch adipate',
      'modified_starch',
      'E1422',
      'modified starch',
      'modified starch',
    ],
  ] as const)('%s', (name, functionalClass, eNumber, byName, byNumber) => {
    const lots = [additive(name, functionalClass, eNumber)];
    expect(listOf(lots)).toBe(byName);
    expect(listOf(lots, { eNumbers: true })).toBe(byNumber);
  });

  it('what is only carried over, or a processing aid, is not listed; its allergen is', () => {
    const sugar = lot(specify(part('sugar')), 99);
    expect(listOf([sugar, additive('citric acid', 'acid', 'E330', true)])).toBe('sugar');
    const wine = part('lysozyme', null, {
      additive: { functionalClass: 'preservative', eNumber: 'E1105', carriedOver: true },
      origins: [{ allergen: 'egg' }],
    });
    expect(listOf([sugar, lot(specify(wine), 1)])).toContain('(**egg**)');
  });
});

describe('flavourings: Regulation (EC) No 1334/2008, Article 16 (from memory)', () => {
  const orange = (fromSource: string, recognisable = true): string | null =>
    flavouringName(
      {
        natural: true,
        source: { en: 'orange' },
        fromSourcePercent: new Decimal(fromSource),
        recognisable,
        imitatesChocolate: false,
      },
      { en: 'natural orange flavouring' },
      'en',
    );

  it('needs 95 % from the source to be called after it', () => {
    expect(orange('95')).toBe('natural orange flavouring');
    expect(orange('92')).toBe('natural orange flavouring with other natural flavourings');
    expect(orange('92', false)).toBe('natural flavouring');
  });

  it('a flavouring that is not stated as natural may not call itself so', () => {
    const claimed = part('natural vanilla flavouring', null, {
      flavouring: {
        natural: false, source: null, fromSourcePercent: null, recognisable: false, imitatesChocolate: false,
      },
    }); // prettier-ignore
    const { findings } = declarationOf([lot(specify(claimed), 1)]);
    expect(findings.map((entry) => entry.code)).toEqual(['natural-claim']);
  });
});
