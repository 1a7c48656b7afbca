import { compositionOf } from '../reference-ingredients';
import { Decimal } from '../units';
import { compositionCautions, cook, fatMix, ganacheBalance, makeUpOf } from '.';

const mix = (figures: Parameters<typeof compositionOf>[0]) =>
  makeUpOf(compositionOf(figures), new Decimal(100));

const GANACHE = { water: 20, cocoaButter: 18, milkFat: 14, sucrose: 30, fatFreeCocoa: 8, fibre: 8 };

describe('balance of a ganache', () => {
  it('is in range where practice says so', () => {
    const verdicts = ganacheBalance(mix(GANACHE), 'moulded').map((row) => row.verdict);
    expect(new Set(verdicts)).toEqual(new Set(['in']));
  });

  it('says why and what helps when it is out', () => {
    const wet = ganacheBalance(mix({ ...GANACHE, water: 30 }), 'moulded');
    const water = wet.find((row) => row.quantity === 'water');
    expect(water?.verdict).toBe('high');
    expect(water?.reason).toContain('short life');
  });

  it('allows more sugar to milk and white chocolate', () => {
    const white = { water: 18, cocoaButter: 18, milkFat: 14, sucrose: 37, lactose: 4 };
    const sugar = ganacheBalance(mix(white), 'moulded').find(
      (row) => row.quantity === 'sweeteners',
    );
    expect(sugar?.verdict).toBe('in');
  });
});

describe('what a mix warns of', () => {
  const codes = (figures: Parameters<typeof compositionOf>[0]): string[] =>
    compositionCautions(mix(figures)).map((row) => row.code);

  it('warns of polyols above 10 %', () => {
    expect(codes({ water: 20, sorbitol: 11 })).toContain('polyols-over-ten-percent');
    expect(codes({ water: 20, sorbitol: 10 })).not.toContain('polyols-over-ten-percent');
  });

  it('warns of a soft set and of no snap', () => {
    expect(codes({ milkFat: 4, cocoaButter: 6 })).toContain('soft-set');
    expect(codes({ milkFat: 6, cocoaButter: 4 })).toContain('no-snap');
    expect(fatMix(mix({ milkFat: 4, cocoaButter: 6 })).milkFatRatio?.toNumber()).toBe(0.4);
  });

  it('warns when the fat is near what an emulsion can hold', () => {
    expect(codes({ water: 15, cocoaButter: 55, sucrose: 15 })).toContain('emulsion-near-limit');
  });
});

describe('a pot', () => {
  const water = { kind: 'add', content: mix({ water: 100 }), infusion: false } as const;

  it('refuses more steam than water', () => {
    const pot = cook([water, { kind: 'steam', massG: new Decimal(101) }]);
    expect(!pot.ok && pot.refusal.code).toBe('more-steam-than-water');
  });

  it('refuses to lose more than it holds', () => {
    const pot = cook([water, { kind: 'remove', massG: new Decimal(101) }]);
    expect(!pot.ok && pot.refusal.code).toBe('more-lost-than-present');
  });

  it('boils alcohol off before water', () => {
    const spirit = { ...water, content: mix({ water: 60, alcohol: 40 }) };
    const pot = cook([spirit, { kind: 'steam', massG: new Decimal(45) }]);
    expect(pot.ok && pot.value.content.parts.alcohol.toNumber()).toBe(0);
    expect(pot.ok && pot.value.content.parts.water.toNumber()).toBe(55);
  });
});
