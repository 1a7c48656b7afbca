import { Decimal } from '@api/domain/units';
import { declarationOf, listOf } from '../../support/labels/written';
import {
  darkChocolate,
  hazelnutGanache,
  lecithin,
  lot,
  milk,
  part,
  specify,
} from '../../support/labels/ingredients';

describe('Regulation (EU) No 1169/2011, Annex VII Part A: order of the list', () => {
  const syrup = [
    lot(specify(part('sugar')), 600),
    lot(specify(part('glucose syrup')), 250),
    lot(specify(part('water', null, { flags: { addedWater: true } })), 300),
  ];

  it('point 1: added water is what the finished weight has beyond all else (worked by hand)', () => {
    expect(listOf(syrup, { finishedG: 1000 })).toBe('sugar, glucose syrup, water');
  });

  it('point 1: water up to 5 % of the finished weight may be left out (40 of 890 g)', () => {
    expect(listOf(syrup, { finishedG: 890 })).toBe('sugar, glucose syrup');
  });

  it('point 1: water just above 5 % stays (45 of 895 g is 5.03 %)', () => {
    expect(listOf(syrup, { finishedG: 895 })).toBe('sugar, glucose syrup, water');
  });

  it('point 1: a spirit stands by what of it is left in the finished food', () => {
    const rum = lot(specify(part('rum', null, { flags: { volatile: true } })), 60, {
      massG: new Decimal(20),
    });
    expect(listOf([lot(specify(part('butter')), 40), rum], { finishedG: 60 })).toBe('butter, rum');
  });

  it('point 6 (from memory): 1.99 % is in the tail and 2.00 % is not', () => {
    const list = (grams: string): string =>
      listOf(
        [
          lot(specify(part('sugar')), 900),
          lot(specify(part('vanilla')), grams),
          lot(specify(part('salt')), '15'),
        ],
        { finishedG: 1000, market: 'US' },
      );
    expect(list('20.1')).toBe('sugar, vanilla, contains 2% or less of: salt');
    expect(list('19.9')).toBe('sugar, contains 2% or less of: vanilla, salt');
  });

  it('point 6 (from memory): in Europe 1.99 % may stand anywhere behind, 2.00 % keeps its place', () => {
    const tail = (grams: string): string[] =>
      declarationOf([lot(specify(part('sugar')), 900), lot(specify(part('vanilla')), grams)], {
        finishedG: 1000,
      })
        .places.filter((place) => place.inTail)
        .map((place) => place.entry.node.names.en ?? '');
    expect(tail('19.9')).toEqual(['vanilla']);
    expect(tail('20')).toEqual([]);
  });

  it('point 9 (from memory): a hydrogenated fat says how far', () => {
    const fat = part('palm oil', null, { flags: { fullyHydrogenated: true } });
    expect(listOf([lot(specify(fat), 10)])).toBe('palm oil (fully hydrogenated)');
  });
});

describe('Regulation (EU) No 1169/2011, Annex VII Part E: compound ingredients', () => {
  it('point 1: the compound stands in its place with its own list behind it', () => {
    expect(listOf(hazelnutGanache(), { finishedG: 1000 })).toBe(
      'dark chocolate (cocoa mass, sugar, cocoa butter, emulsifier: **soya** lecithins), ' +
        'cream (**milk**), **hazelnuts**, glucose syrup, butter (**milk**), rum, vanilla extract',
    );
  });

  it('taken apart, every last ingredient stands in its own place', () => {
    expect(listOf(hazelnutGanache(), { finishedG: 1000, listForm: 'flattened' })).toBe(
      'cream (**milk**), cocoa mass, sugar, **hazelnuts**, glucose syrup, butter (**milk**), rum, ' +
        'vanilla extract, cocoa butter, emulsifier: **soya** lecithins',
    );
  });

  const withNibs = (grams: string): string => {
    const nibs = part('chocolate', null, {
      flags: { definedInUnionLaw: true },
      parts: [part('sugar', '49.5'), part('whole milk powder', '50', { origins: [milk] }), lecithin('0.5')],
    }); // prettier-ignore
    return listOf([lot(specify(part('fondant')), 1000), lot(specify(nibs), grams)], {
      finishedG: 1000,
    });
  };

  it('point 2(a): under 2 % a chocolate needs no list, but keeps its allergens', () => {
    expect(withNibs('19')).toBe('fondant, chocolate (**milk**, **soya**)');
  });

  it('point 2(a): at 2.0 % the whole list is due', () => {
    expect(withNibs('20')).toBe(
      'fondant, chocolate (whole **milk** powder, sugar, emulsifier: **soya** lecithins)',
    );
  });

  it('a compound that Union law does not define keeps its list at 1.5 %', () => {
    const marzipan = part('marzipan', null, {
      parts: [part('almonds', '60', { origins: [{ allergen: 'almond' }] }), part('sugar', '40')],
    });
    expect(
      listOf([lot(specify(part('fondant')), 1000), lot(specify(marzipan), 15)], {
        finishedG: 1000,
      }),
    ).toBe('fondant, marzipan (**almonds**, sugar)');
  });

  it('a colour inside a compound whose list is left out still shows (Article 20)', () => {
    const strands = part('chocolate', null, {
      flags: { definedInUnionLaw: true },
      parts: [
        part('sugar', '99'),
        part('carmines', '1', {
          additive: { functionalClass: 'colour', eNumber: 'E120', carriedOver: false },
        }),
      ],
    });
    expect(
      listOf([lot(specify(part('fondant')), 1000), lot(specify(strands), 10)], {
        finishedG: 1000,
        eNumbers: true,
      }),
    ).toBe('fondant, chocolate (colour: E120)');
  });

  it('alike ingredients of two lots are one entry; unlike ones are two', () => {
    const dark = specify(darkChocolate());
    const lots = [lot(dark, 100), lot(dark, 50, { lotId: 'another', lotCode: 'B' })];
    expect(listOf(lots).match(/dark chocolate/g)).toHaveLength(1);
    const milkier = specify(part('dark chocolate', null, { origins: [milk] }));
    expect(listOf([...lots, lot(milkier, 10)]).match(/dark chocolate/g)).toHaveLength(2);
  });
});
