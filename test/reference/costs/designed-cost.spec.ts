import { compareCosts, totalCost, waterfall } from '@api/domain/costing';
import { Decimal, sum } from '@api/domain/units';
import Big from 'big.js';
import { BASIS, RECIPES, costOf, good } from './workshop-example';
import { designedCost, recipeFacts } from '@api/domain/costing';

// Worked example of our own (hand arithmetic); big.js is the referee for the money.
describe('cost as designed, worked example of a ganache piece and its box', () => {
  it('costs ten ganaches at 21.966', () => {
    expect(totalCost(costOf('ganache')).times(3130).toFixed(3)).toBe('21.966');
  });

  it('costs 606 good pieces at 46.292 27 of material and 165.00 of labour', () => {
    const entries = costOf('piece');
    const of = (category: string): Decimal =>
      totalCost(entries.filter((entry) => entry.category === category));
    expect(of('material').times(606).toFixed(5)).toBe('46.29227');
    expect(of('material').toFixed(6)).toBe('0.076390');
    expect(of('labour').times(606).toFixed(2)).toBe('165.00');
    expect(of('labour').toFixed(6)).toBe('0.272277');
  });

  it('costs the box of twelve at 5.414 01, as big.js reckons it', () => {
    const box = totalCost(costOf('box'));
    expect(box.toFixed(5)).toBe('5.41401');
    Big.DP = 40;
    const ganache = [
      ['1', '4.20'],
      ['1.5', '9.80'],
      ['0.2', '2.10'],
      ['0.15', '3.40'],
      ['0.08', '5.20'],
      ['0.2', '8.60'],
    ].reduce((whole, [kg, price]) => whole.plus(new Big(kg ?? 0).times(price ?? 0)), new Big(0));
    const piece = ganache
      .plus(new Big('2.482272').times('9.80'))
      .plus(new Big('7.5').times('22'))
      .div(606);
    expect(box.toFixed(30)).toBe(piece.times(12).plus('1.23').toFixed(30));
  });

  it('lists the box as 0.916 68 material, 3.267 33 labour and 1.23 packaging', () => {
    const entries = costOf('box');
    const of = (category: string): string =>
      totalCost(entries.filter((entry) => entry.category === category)).toFixed(5);
    expect([of('material'), of('labour'), of('packaging')]).toEqual([
      '0.91668',
      '3.26733',
      '1.23000',
    ]);
  });

  it('draws a waterfall whose cents meet and end at the rounded whole', () => {
    const { steps, total } = waterfall(costOf('box'));
    expect(total.toFixed(2)).toBe('5.41');
    expect(steps.map(({ part }) => part)).toEqual(['filling', 'shell', 'packaging', 'maker']);
    expect(sum(steps.map(({ amount }) => amount)).toFixed(2)).toBe('5.41');
    expect(steps.at(-1)?.to.toFixed(2)).toBe('5.41');
    steps.slice(1).forEach((step, index) => {
      expect(step.from.equals(steps[index]?.to ?? -1)).toBe(true);
    });
  });
});

describe('losses and good pieces', () => {
  it('divides by what stays: 3 % loss needs 1030.93 for 1000', () => {
    const facts = good(
      recipeFacts(
        'x',
        {
          lines: [{ itemId: 'a', unit: 'g', quantity: new Decimal(1000), role: 'filling' }],
          losses: [{ step: 'pipe', kind: 'scrapings', percent: new Decimal(3) }],
          yieldMassG: null,
          yieldPieces: 1,
          cavitiesPerTray: null,
        },
        [],
        true,
      ),
    );
    expect(facts.lines[0]?.quantity.toFixed(2)).toBe('1030.93');
    expect(facts.lines[0]?.wasteRatio.toFixed(2)).toBe('0.03');
  });

  it('multiplies the yields of steps: 0.980 × 0.965 of 3130 g leave 2960.041 g', () => {
    const percent = (text: string) => ({
      step: text,
      kind: 'scrapings' as const,
      percent: new Decimal(text),
    });
    const facts = good(
      recipeFacts(
        'x',
        {
          lines: [{ itemId: 'a', unit: 'g', quantity: new Decimal('2960.041'), role: 'filling' }],
          losses: [percent('2'), percent('3.5')],
          yieldMassG: null,
          yieldPieces: 624,
          cavitiesPerTray: 24,
        },
        [],
        true,
      ),
    );
    expect(facts.lines[0]?.quantity.toFixed(3)).toBe('3130.000');
  });

  it('lets the good pieces bear the rejects: 624 filled, 18 lost, 606 pay', () => {
    const rejects = {
      step: 'all',
      kind: 'rejects' as const,
      percent: new Decimal(18).dividedBy(6.24),
    };
    const facts = good(
      recipeFacts(
        'piece',
        {
          lines: [{ itemId: 'dark', unit: 'g', quantity: new Decimal('2433.6'), role: 'shell' }],
          losses: [rejects],
          yieldMassG: null,
          yieldPieces: 624,
          cavitiesPerTray: 24,
        },
        [],
        true,
      ),
    );
    expect(facts.goodYield.toFixed(6)).toBe('606.000000');
    const entries = good(
      designedCost('piece', { ...BASIS, recipes: new Map([...RECIPES, ['piece', facts]]) }),
    );
    const lost = totalCost(entries.filter(({ category }) => category === 'loss'));
    expect(totalCost(entries).times(606).toFixed(5)).toBe('23.84928');
    expect(lost.times(606).dividedBy('23.84928').toFixed(6)).toBe(
      new Decimal(18).dividedBy(624).toFixed(6),
    );
  });
});

describe('overhead', () => {
  const box = (overhead: typeof BASIS.overhead): string =>
    totalCost(
      costOf('box', { ...BASIS, overhead }).filter((e) => e.category === 'overhead'),
    ).toFixed(6);

  it('lays 8.00 an hour on 7.5 h of 606 pieces, twelve times', () => {
    expect(box({ kind: 'per_hour', ratePerHour: new Decimal(8) })).toBe('1.188119');
  });

  it('lays 0.05 on each of twelve pieces and nothing on the box itself', () => {
    expect(box({ kind: 'per_piece', amountPerPiece: new Decimal('0.05') })).toBe('0.600000');
  });

  it('lays 10 % on the direct cost once, however deep the recipe is', () => {
    expect(box({ kind: 'percent', percent: new Decimal(10) })).toBe('0.541401');
  });
});

describe('refusals', () => {
  it('never takes a missing price for free', () => {
    const prices = new Map(BASIS.prices);
    prices.delete('syrup');
    const cost = designedCost('box', { ...BASIS, prices });
    expect(cost.ok ? '' : cost.refusal.code).toBe('purchase-price-missing');
  });

  it('refuses a rate that begins after the day', () => {
    const cost = designedCost('box', { ...BASIS, day: '2025-12-31' });
    expect(cost.ok ? '' : cost.refusal.code).toBe('labour-rate-missing');
  });

  it('refuses a recipe that contains itself', () => {
    const recipes = new Map(RECIPES);
    const ganache = recipes.get('ganache');
    if (!ganache) throw new Error('the example has a ganache');
    const [first] = ganache.lines;
    if (!first) throw new Error('the ganache has lines');
    recipes.set('ganache', { ...ganache, lines: [{ ...first, component: 'piece' }] });
    const cost = designedCost('box', { ...BASIS, recipes });
    expect(cost.ok ? '' : cost.refusal.code).toBe('recipe-contains-itself');
  });
});

it('sets designed and made side by side with the difference of each part', () => {
  const designed = costOf('box');
  const made = designed.map((entry) =>
    entry.part === 'shell' ? { ...entry, amount: entry.amount.times(2) } : entry,
  );
  const rows = compareCosts(designed, made);
  const shell = rows.find(({ part }) => part === 'shell');
  expect(shell?.difference.toFixed(6)).toBe(shell?.designed.toFixed(6));
  expect(sum(rows.map(({ difference }) => difference)).toFixed(6)).toBe(
    totalCost(made).minus(totalCost(designed)).toFixed(6),
  );
});
