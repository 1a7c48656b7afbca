import {
  energyOf,
  euAmount,
  euEnergy,
  euPanel,
  percentOfIntake,
  saltFromSodium,
  servingOfPackage,
  servingOfPieces,
  servingsPerContainer,
  usCalories,
  usCholesterol,
  usEnergy,
  usExemption,
  usFat,
  usGrams,
  usIron,
  usMineral,
  usSodium,
  usVitaminD,
  percentDailyValue,
  withinTolerance,
} from '@api/domain/nutrition';
import { NUTRIENTS, type Nutrient, type NutritionPer100g } from '@api/domain/specification';
import { Decimal, ZERO } from '@api/domain/units';

const d = (text: string): Decimal => new Decimal(text);

const per100g = (stated: Partial<Record<Nutrient, string>>): NutritionPer100g =>
  Object.fromEntries(
    NUTRIENTS.map((nutrient) => [nutrient, d(stated[nutrient] ?? '0')]),
  ) as unknown as NutritionPer100g;

const energy = (stated: Partial<Record<Nutrient, string>>): string => {
  const { kJ, kcal } = energyOf(per100g(stated)) ?? { kJ: ZERO, kcal: ZERO };
  return `${euEnergy(kJ)} kJ / ${euEnergy(kcal)} kcal`;
};

describe('Regulation (EU) No 1169/2011, Annex XIV: energy from grams, each unit by itself', () => {
  it('fat 42, carbohydrate 35, fibre 11, protein 8 (2373 / 4.184 would give 567)', () => {
    expect(energy({ fat: '42', carbohydrate: '35', fibre: '11', protein: '8' })).toBe(
      '2373 kJ / 572 kcal',
    );
  });

  it('alcohol counts 29 and 7', () => {
    expect(energy({ fat: '20', carbohydrate: '50', protein: '3', alcohol: '5' })).toBe(
      '1786 kJ / 427 kcal',
    );
  });

  it('from unrounded grams', () => {
    expect(energy({ fat: '31.4', carbohydrate: '56.8', fibre: '2.1', protein: '7.2' })).toBe(
      '2267 kJ / 543 kcal',
    );
  });

  it('polyols 10 and 2.4, erythritol nothing, both inside carbohydrate', () => {
    expect(energy({ carbohydrate: '60', polyols: '50', erythritol: '20' })).toBe(
      '470 kJ / 112 kcal',
    );
  });

  it('a figure that is not stated makes no energy', () => {
    expect(energyOf({ ...per100g({}), fibre: null })).toBe(null);
  });
});

describe('Commission guidance on tolerances, December 2012 (by a laboratory’s summary)', () => {
  it.each([
    ['fat', '31.4', '31'],
    ['carbohydrate', '56.8', '57'],
    ['fibre', '2.1', '2.1'],
    ['protein', '7.2', '7.2'],
    ['fat', '0.5', '0'],
    ['fat', '0.51', '0.5'],
    ['fat', '9.96', '10'],
    ['saturates', '0.1', '0'],
    ['saturates', '0.14', '0.1'],
    ['salt', '0.0125', '0'],
    ['salt', '0.01275', '0.01'],
    ['salt', '1.25', '1.3'],
  ] as const)('%s %s g is printed as %s', (row, grams, printed) => {
    expect(euAmount(row, d(grams))).toBe(printed);
  });

  it('salt is sodium × 2.5: 0.044 g sodium is 0.11 g', () => {
    expect(euAmount('salt', saltFromSodium(d('0.044')))).toBe('0.11');
    expect(saltFromSodium(d('0.005')).toString()).toBe('0.0125');
  });

  it('25 g of 2373 kJ is 593 kJ, 7 % of 8400 (Annex XIII)', () => {
    const portion = d('2373').times(25).dividedBy(100);
    expect(euEnergy(portion)).toBe('593');
    expect(percentOfIntake('energyKJ', portion)).toBe('7');
  });

  it.each([
    ['fat', '9', '10.5', '10.6'],
    ['fat', '20', '24', '24.1'],
    ['carbohydrate', '9', '11', '11.1'],
    ['sugars', '30', '36', '36.1'],
    ['protein', '50', '58', '58.1'],
    ['saturates', '3.9', '4.7', '4.71'],
    ['saturates', '10', '12', '12.1'],
    ['salt', '1.2', '1.575', '1.576'],
    ['salt', '2', '2.4', '2.41'],
  ] as const)(
    '%s declared as %s g tolerates %s and not %s (from memory)',
    (row, declared, within, out) => {
      expect(withinTolerance(row, d(declared), d(within))).toBe(true);
      expect(withinTolerance(row, d(declared), d(out))).toBe(false);
    },
  );

  it('fat declared as 42 tolerates 50.0 and not 50.1 (from memory)', () => {
    expect(withinTolerance('fat', d('42'), d('50.0'))).toBe(true);
    expect(withinTolerance('fat', d('42'), d('50.1'))).toBe(false);
  });

  it('Annex XV: the rows stand in the order of the Regulation', () => {
    const panel = euPanel(per100g({ fat: '30', polyols: '1', carbohydrate: '50', sugars: '40' }), {
      language: 'en',
      portionG: d('25'),
      referenceIntakes: true,
      fibre: true,
      naturalSaltOnly: false,
    });
    expect(panel?.rows.map((row) => row.label)).toEqual([
      'Energy',
      'Fat',
      'of which saturates',
      'Carbohydrate',
      'of which sugars',
      'of which polyols',
      'Fibre',
      'Protein',
      'Salt',
    ]);
    expect(panel?.notes).toEqual(['* Reference intake of an average adult (8 400 kJ/2 000 kcal)']);
  });
});

describe('21 CFR 101.9(c): rounding of Nutrition Facts (public copies of FDA’s table)', () => {
  it.each([['4.9', '0'], ['47', '45'], ['52', '50'], ['56', '60']])('%s Calories → %s', (kcal, printed) => {
    expect(usCalories(d(kcal))).toBe(printed);
  }); // prettier-ignore

  it.each([['0.49', '0 g'], ['4.74', '4.5 g'], ['5.5', '6 g']])('%s g fat → %s', (grams, printed) => {
    expect(usFat(d(grams))).toBe(printed);
  }); // prettier-ignore

  it.each([
    ['1.9', '0 mg'],
    ['3', 'less than 5 mg'],
    ['7', '5 mg'],
    ['8', '10 mg'],
  ])('%s mg cholesterol → %s', (mg, printed) => {
    expect(usCholesterol(d(mg))).toBe(printed);
  });

  it.each([['4.9', '0 mg'], ['138', '140 mg'], ['144', '140 mg'], ['146', '150 mg']])('%s mg sodium → %s', (mg, printed) => {
    expect(usSodium(d(mg))).toBe(printed);
  }); // prettier-ignore

  it.each([['0.49', '0 g'], ['0.7', 'less than 1 g'], ['1.4', '1 g'], ['1.5', '2 g']])('%s g carbohydrate → %s', (grams, printed) => {
    expect(usGrams(d(grams))).toBe(printed);
  }); // prettier-ignore

  it.each([['ironMg', '0.17', '0%'], ['ironMg', '0.27', '2%'], ['ironMg', '1.5', '8%'], ['ironMg', '4', '20%'], ['ironMg', '11', '60%']] as const)(
    '%s %s is %s of the daily value (steps as read, values from memory)',
    (nutrient, amount, printed) => {
      expect(percentDailyValue(nutrient, d(amount))).toBe(printed);
    },
  ); // prettier-ignore

  it('vitamin D and iron to a tenth, calcium and potassium to ten (from memory)', () => {
    expect([usVitaminD(d('0.44')), usIron(d('1.95'))]).toEqual(['0.4mcg', '2mg']);
    expect([usMineral(d('124')), usMineral(d('125'))]).toEqual(['120mg', '130mg']);
  });

  it('general factors with sugar alcohols by their own (from memory)', () => {
    const kcal = usEnergy({
      fat: d('10'),
      carbohydrate: d('50'),
      protein: d('5'),
      sugarAlcohols: { maltitol: d('20'), erythritol: d('10') },
      alcohol: ZERO,
    });
    expect(kcal.toString()).toBe('232'); // 20 × 4 + 20 × 2.1 + 5 × 4 + 10 × 9, by hand.
  });
});

describe('21 CFR 101.9(b) and 101.12(b): serving of confectionery, 30 g (pieces from memory)', () => {
  it.each([['11', false, 3, '33'], ['18', false, 1, '18'], ['18', true, 2, '36'], ['25', true, 1, '25']] as const)(
    'pieces of %s g, larger preferred %s: %s pieces, %s g',
    (pieceG, preferMore, pieces, grams) => {
      const serving = servingOfPieces(d(pieceG), 'candy', preferMore);
      expect([serving.pieces, serving.grams.toString()]).toEqual([pieces, grams]);
    },
  ); // prettier-ignore

  it('12 g pieces give 2.5: the tie is a setting', () => {
    expect(servingOfPieces(d('12'), 'candy', false).pieces).toBe(2);
    expect(servingOfPieces(d('12'), 'candy', true).pieces).toBe(3);
  });

  it('a bar of 50 g sold singly is one serving; 70 g shows two columns (from memory)', () => {
    expect(servingOfPackage(d('50'), 'candy')).toBe('one_serving');
    expect(servingOfPackage(d('70'), 'candy')).toBe('dual_column');
  });

  it('servings per container: halves from two to five, about whole numbers above', () => {
    expect(servingsPerContainer(d('75'), d('30'))).toBe('2.5');
    expect(servingsPerContainer(d('250'), d('33'))).toBe('about 8');
  });

  it('101.9(j): small retailer without notice, small maker with or without', () => {
    const shop = { totalSalesUsd: 400_000, foodSalesUsd: 400_000, fullTimeEquivalents: 4, unitsOfProductAYear: 500 }; // prettier-ignore
    expect(usExemption(shop)).toEqual({ rule: '101.9(j)(1)', yearlyNotice: false });
    const larger = { ...shop, totalSalesUsd: 900_000, foodSalesUsd: 900_000 };
    expect(usExemption(larger)).toEqual({ rule: '101.9(j)(18)', yearlyNotice: false });
    const maker = { ...larger, fullTimeEquivalents: 40, unitsOfProductAYear: 50_000 };
    expect(usExemption(maker)).toEqual({ rule: '101.9(j)(18)', yearlyNotice: true });
    expect(usExemption({ ...maker, unitsOfProductAYear: 100_000 })).toBe(null);
  });
});
