import { Decimal } from '../units';
import { commonCauses, fisherOneSided, holm, riskRatio, type Exposure } from '.';

const exposure = (
  unit: string,
  complaints: number,
  others: number,
  ...causes: string[]
): Exposure => ({ unit, complaints, others, causes: new Set(causes) });

const behind = (cause: string): ReadonlySet<string> =>
  new Set(cause === 'ganache 7' ? ['cream 3', 'sugar'] : []);

describe('commonCauses', () => {
  const found = commonCauses(
    [
      exposure('box A', 2, 18, 'ganache 7', 'cream 3', 'sugar', 'mould 1'),
      exposure('box B', 1, 19, 'ganache 7', 'cream 3', 'sugar', 'mould 2'),
      exposure('box C', 0, 60, 'ganache 8', 'sugar', 'mould 1'),
    ],
    behind,
  );

  it('answers first with what all complaints share', () => {
    expect(found.shared).toEqual([
      { cause: 'ganache 7', shareOfUnits: 0.4 },
      { cause: 'cream 3', shareOfUnits: 0.4 },
      { cause: 'sugar', shareOfUnits: 1 },
    ]);
  });

  it('names what the record cannot tell apart together, the most specific first', () => {
    expect(found.suspects[0]?.causes).toEqual(['ganache 7', 'cream 3']);
    expect(found.suspects[0]?.mostSpecific).toEqual(['ganache 7']);
    expect(found.suspects[0]?.nestedIn).toEqual(['sugar']);
  });

  it('says that what is in every unit can be neither accused nor cleared', () => {
    const sugar = found.suspects.find((suspect) => suspect.causes.includes('sugar'));
    expect(sugar?.notDistinguishable).toBe(true);
    expect(sugar?.risk).toBeUndefined();
    expect(sugar?.fisherP.toString()).toBe('1');
  });

  it('adds half a unit to each cell when one is empty, and says so', () => {
    const [first] = found.suspects;
    expect(first?.table).toEqual({
      casesWith: 3,
      othersWith: 37,
      casesWithout: 0,
      othersWithout: 60,
    });
    expect(first?.risk?.halfAdded).toBe(true);
    expect(first?.risk?.ratio).toBeCloseTo(3.5 / 41 / (0.5 / 61), 12);
  });

  it('does not list what no complaint was near', () => {
    expect(found.suspects.flatMap((suspect) => suspect.causes)).not.toContain('ganache 8');
  });

  it('covers all complaints with the fewest causes, without those in every unit', () => {
    expect(found.smallestCovers).toEqual([['cream 3'], ['ganache 7']]);
    const two = commonCauses(
      [
        exposure('A', 1, 5, 'x', 'all'),
        exposure('B', 1, 5, 'y', 'all'),
        exposure('C', 0, 5, 'all'),
      ],
      behind,
    );
    expect(two.smallestCovers).toEqual([['x', 'y']]);
  });

  it('keeps the rarest covers when there are more than it lists', () => {
    const common = Array.from({ length: 40 }, (_, index) => `common ${String(index)}`);
    const many = commonCauses(
      [
        exposure('A', 1, 5, ...common, 'rare'),
        exposure('B', 1, 5, ...common, 'rare'),
        exposure('C', 0, 50, ...common),
        exposure('D', 0, 50),
      ],
      behind,
    );
    expect(many.shared[0]?.cause).toBe('rare');
    expect(many.smallestCovers[0]).toEqual(['rare']);
    expect(many.smallestCovers).toHaveLength(20);
  });
});

describe('holm', () => {
  it('multiplies by the number of tests still open and never falls', () => {
    const adjusted = holm(['0.01', '0.04', '0.03', '0.9'].map((p) => new Decimal(p)));
    expect(adjusted.map(String)).toEqual(['0.04', '0.09', '0.09', '0.9']);
  });
});

describe('riskRatio', () => {
  it('is absent when nothing is without the cause', () => {
    expect(
      riskRatio({ casesWith: 2, othersWith: 3, casesWithout: 0, othersWithout: 0 }),
    ).toBeUndefined();
  });
});

describe('fisherOneSided', () => {
  it('stays exact for tables of many thousand units', () => {
    const p = fisherOneSided({
      casesWith: 3,
      othersWith: 997,
      casesWithout: 0,
      othersWithout: 99_000,
    });
    // C(1000,3) / C(100000,3)
    expect(p.toFixed(12)).toBe(new Decimal(1000 * 999 * 998).div('999970000200000').toFixed(12));
  });
});
