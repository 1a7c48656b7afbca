import { makeUpOf, plus } from '@api/domain/composition';
import { compositionOf, REFERENCE_INGREDIENTS } from '@api/domain/reference-ingredients';
import { Decimal } from '@api/domain/units';
import { dissolved, estimateWaterActivity, norrish, solutesOf } from '@api/domain/water-activity';

const reference = (key: string, massG: number) => {
  const found = REFERENCE_INGREDIENTS.find((row) => row.key === key);
  if (!found) throw new Error(`no reference row ${key}`);
  return makeUpOf(found.composition, new Decimal(massG));
};

const modelled = (makeUp: ReturnType<typeof reference>): number => {
  const water = makeUp.parts.water.toNumber();
  return norrish(water, dissolved(water, solutesOf(makeUp)));
};

describe('real foods', () => {
  it('whole milk freezes at −0.522 °C (from memory): 0.9950', () => {
    expect(Math.abs(modelled(reference('whole-milk-uht', 100)) - 0.995)).toBeLessThan(0.0005);
  });

  it('milk without its minerals would read 0.9970, too high', () => {
    const milk = reference('whole-milk-uht', 100);
    const bare = { ...milk, dairyAsh: new Decimal(0) };
    expect(Math.abs(modelled(bare) - 0.997)).toBeLessThan(0.0003);
  });

  it.each([
    [1000, 0.92, 0.006],
    [500, 0.97, 0.016],
  ])(
    '1 kg of strawberries with %d g of sugar (a sugar maker’s note on jam)',
    (sugar, published, t) => {
      const jam = plus(reference('strawberry', 1000), reference('sucrose', sugar));
      expect(Math.abs(modelled(jam) - published)).toBeLessThan(t);
    },
  );

  it('sweetened condensed milk is under 0.86, usually 0.80–0.85 (general reference)', () => {
    const milk = reference('condensed-milk-sweetened', 100);
    expect(modelled(milk)).toBeLessThan(0.86);
    expect(modelled(milk)).toBeGreaterThan(0.845);
  });

  it('condensed milk with all its lactose dissolved would read 0.02 lower: the unsafe side', () => {
    const milk = reference('condensed-milk-sweetened', 100);
    const result = estimateWaterActivity(milk);
    if (result.status !== 'estimated') throw new Error('expected an estimate');
    expect(result.allDissolved).toBeLessThan(0.835);
    expect(result.capped - result.allDissolved).toBeGreaterThan(0.015);
    expect(result.value.toNumber()).toBeCloseTo(result.capped, 2);
  });

  it('water bound by protein (0.3 g per g) lowers condensed milk to about 0.84', () => {
    const result = estimateWaterActivity(reference('condensed-milk-sweetened', 100), {
      perGramCocoa: 0,
      perGramProtein: 0.3,
    });
    if (result.status !== 'estimated') throw new Error('expected an estimate');
    expect(Math.abs(result.capped - 0.839)).toBeLessThan(0.004);
  });

  it('honey (0.47–0.563 in 706 flower honeys, Food Sci Technol 10.1590/1678-457X.31716) gets no number', () => {
    const result = estimateWaterActivity(reference('honey', 100));
    expect(result.status).toBe('outside');
    expect(result.worst?.toNumber()).toBeGreaterThanOrEqual(0.72);
  });

  it.each([
    ['cocoa-butter', 'too little water'],
    ['hazelnut-roasted', 'too little water'],
    ['milk-chocolate', 'too little water'],
    ['spirit-40', '15 % alcohol'],
    ['salt', 'too little water'],
  ])('%s is outside the model: %s', (key, words) => {
    const result = estimateWaterActivity(reference(key, 100));
    expect(result).toMatchObject({ status: 'outside' });
    expect(result.status === 'outside' && result.reason).toContain(words);
  });

  it('a syrup of DE 10 is outside the range in which its constants hold', () => {
    const syrup = compositionOf({ water: 30, higherSaccharides: 70, syrupDe: 10 });
    const result = estimateWaterActivity(makeUpOf(syrup, new Decimal(100)));
    expect(result.status).toBe('outside');
  });

  it('an ingredient without composition gives no number, a pinch of one counts as water', () => {
    const jelly = plus(reference('raspberry', 500), reference('sucrose', 500));
    const unknown = makeUpOf(null, new Decimal(100));
    const pinch = makeUpOf(null, new Decimal(10));
    expect(estimateWaterActivity(plus(jelly, unknown)).status).toBe('outside');
    expect(modelled(jelly)).toBeLessThan(
      (estimateWaterActivity(plus(jelly, pinch)).worst ?? new Decimal(0)).toNumber() - 0.02,
    );
  });
});
