import { Decimal } from '../units';
import { type BatchToFill, lackingOf } from './lacking';

const quantities = (of: Record<string, number>) =>
  new Map(Object.entries(of).map(([item, quantity]) => [item, new Decimal(quantity)]));
const batch = (
  name: string,
  lines: readonly (readonly [item: string, quantity: number])[],
  drawn: Record<string, number> = {},
): BatchToFill => ({
  batch: name,
  lines: lines.map(([item, quantity]) => ({ item, quantity: new Decimal(quantity) })),
  drawn: quantities(drawn),
});
const lacking = (batches: readonly BatchToFill[], kept: Record<string, number> = {}) =>
  lackingOf(batches, quantities(kept)).map(({ batch: of, item, quantity }) => [
    of,
    item,
    quantity.toNumber(),
  ]);

describe('what an open making lacks', () => {
  it('is what its plan takes less what was drawn and what is kept for it', () => {
    expect(lacking([batch('a', [['cream', 480]], { cream: 100 })], { cream: 200 })).toEqual([
      ['a', 'cream', 180],
    ]);
  });

  it('lets what was reserved for the head fill its parts once the head is filled', () => {
    const pots = [batch('head', [['cream', 240]]), batch('part', [['cream', 240]])];
    expect(lacking(pots, { cream: 480 })).toEqual([]);
    expect(lacking(pots, { cream: 300 })).toEqual([['part', 'cream', 180]]);
    expect(lacking(pots, { cream: 100 })).toEqual([
      ['head', 'cream', 140],
      ['part', 'cream', 240],
    ]);
  });

  it('does not fill a part with what was weighed into another, which has to be put back first', () => {
    const pots = [batch('head', [['cream', 240]], { cream: 480 }), batch('part', [['cream', 240]])];
    expect(lacking(pots)).toEqual([['part', 'cream', 240]]);
  });

  it('counts an item once that is taken twice, as shell and as cap', () => {
    const lines = [
      ['couverture', 96],
      ['couverture', 48],
    ] as const;
    expect(lacking([batch('cast', lines, { couverture: 100 })])).toEqual([
      ['cast', 'couverture', 44],
    ]);
  });
});
