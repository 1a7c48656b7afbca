import { plan, shoppingList, waysOut, type Plan, type PlanProblem } from '@api/domain/planning';
import { atOnce } from '@api/domain/steps';
import { faultsOf } from './audit-plan';
import { D, TODAY, bought, cast, cooked, demand, packed, workshop } from './small-workshop';

// Every figure here is a worked example of our own; rest overnight before a piece is packed and
// whole trays only are common practice, no source.
const planned = (problem: PlanProblem): Plan => {
  const result = plan(problem);
  if (!result.ok) throw new Error(result.refusal.detail);
  expect(faultsOf(problem, result.value)).toEqual([]);
  return result.value;
};
const lines = (made: Plan) =>
  made.batches.map(({ item, day, quantity, trays }) => [item, day, quantity.toString(), trays]);

const ITEMS = [
  cooked('ganache', { lifeDays: 21 }),
  cast('piece', 'ganache', { lifeDays: 60 }),
  packed('box', { piece: 12, carton: 1 }),
];

describe('from an order back to what to do when', () => {
  it('packs on the day, casts the day before, cooks for it, as late as it can', () => {
    const made = planned(workshop(ITEMS, { demands: [demand('o1', 'box', 6, '2026-11-06')] }));
    expect(lines(made)).toEqual([
      ['ganache', '2026-11-05', '360', undefined],
      ['piece', '2026-11-05', '72', 3],
      ['box', '2026-11-06', '6', undefined],
    ]);
    expect(made.shortfalls).toEqual([]);
  });

  it('never starts on a closed day: an order for Monday is cast on Friday', () => {
    const made = planned(workshop(ITEMS, { demands: [demand('o1', 'box', 2, '2026-11-09')] }));
    expect(lines(made).map(([item, day]) => [item, day])).toEqual([
      ['ganache', '2026-11-06'],
      ['piece', '2026-11-06'],
      ['box', '2026-11-09'],
    ]);
  });

  it('spills to earlier days when there are not enough moulds', () => {
    const made = planned(workshop(ITEMS, { demands: [demand('o1', 'box', 16, '2026-11-06')] }));
    const casts = lines(made).filter(([item]) => item === 'piece');
    expect(casts).toEqual([
      ['piece', '2026-11-04', '96', 4],
      ['piece', '2026-11-05', '96', 4],
    ]);
  });

  it('casts whole trays and gives what is left over to the next order', () => {
    const made = planned(
      workshop(ITEMS, {
        demands: [demand('a', 'piece', 10, '2026-11-05'), demand('b', 'piece', 14, '2026-11-06')],
      }),
    );
    expect(lines(made).filter(([item]) => item === 'piece')).toEqual([
      ['piece', '2026-11-04', '24', 1],
    ]);
  });

  it('needs 26 trays for 600 good pieces when 18 of 624 are lost', () => {
    const items = [
      cooked('ganache'),
      cast('piece', 'ganache', { goodRatio: D(606).dividedBy(624).toString(), minutesPerTray: 10 }),
    ];
    const made = planned(
      workshop(items, {
        moulds: new Map([['dome', 26]]),
        demands: [demand('o', 'piece', 600, '2026-11-06')],
      }),
    );
    expect(made.batches.find(({ item }) => item === 'piece')?.trays).toBe(26);
    expect(made.batches.find(({ item }) => item === 'piece')?.quantity.toString()).toBe('606');
  });
});

describe('stock', () => {
  const stock = (lastDay: string, held = false, quantity = 72) => [
    { lot: 'p1', item: 'piece', quantity: D(quantity), lastDay, held },
  ];
  const withLife = (minLifeDays: number, lots: PlanProblem['lots']) =>
    planned(
      workshop(ITEMS, { lots, demands: [demand('o1', 'box', 6, '2026-11-06', { minLifeDays })] }),
    );

  it('uses what is there and lasts long enough for the customer', () => {
    expect(lines(withLife(15, stock('2026-11-21')))).toEqual([
      ['box', '2026-11-06', '6', undefined],
    ]);
  });

  it('leaves a lot that would be a day too short', () => {
    expect(withLife(15, stock('2026-11-20')).batches.map(({ item }) => item)).toContain('piece');
  });

  it('never uses a held lot', () => {
    expect(withLife(0, stock('2026-12-31', true)).batches.map(({ item }) => item)).toContain(
      'piece',
    );
  });

  it('takes the shortest-lived lot that will do first', () => {
    const lots = [
      ...stock('2026-12-31', false, 24),
      { lot: 'p2', item: 'piece', quantity: D(24), lastDay: '2026-12-10', held: false },
    ];
    const made = planned(
      workshop(ITEMS, { lots, demands: [demand('o', 'piece', 24, '2026-11-06')] }),
    );
    expect(made.served[0]?.uses.map(({ source }) => source)).toEqual([{ kind: 'lot', lot: 'p2' }]);
  });

  it('makes late enough for the life that was promised', () => {
    const items = [cooked('ganache', { lifeDays: 10 }), cast('piece', 'ganache', { lifeDays: 10 })];
    const made = planned(
      workshop(items, { demands: [demand('o', 'piece', 24, '2026-11-10', { minLifeDays: 9 })] }),
    );
    expect(made.batches.find(({ item }) => item === 'piece')?.day).toBe('2026-11-09');
    const never = plan(
      workshop(items, { demands: [demand('o', 'piece', 24, '2026-11-10', { minLifeDays: 10 })] }),
    );
    expect(never.ok && never.value.shortfalls[0]?.because.map(({ kind }) => kind)).toEqual([
      'life',
    ]);
  });
});

describe('what has begun', () => {
  it('is counted on, and what it takes up is not planned twice', () => {
    const begun = [
      {
        batch: 'B1',
        item: 'piece',
        quantity: D(72),
        readyDay: '2026-11-03',
        busy: [{ resource: 'people', day: TODAY, minutes: 480 }],
        moulds: { design: 'dome', count: 3, untilDay: TODAY },
      },
    ];
    const made = planned(
      workshop(ITEMS, { begun, demands: [demand('o', 'box', 8, '2026-11-04')] }),
    );
    expect(lines(made)).toEqual([
      ['ganache', '2026-11-03', '120', undefined],
      ['piece', '2026-11-03', '24', 1],
      ['box', '2026-11-04', '8', undefined],
    ]);
    expect(made.batches.at(-1)?.uses).toContainEqual({
      item: 'piece',
      quantity: D(72),
      source: { kind: 'begun', batch: 'B1' },
    });
  });

  it('replans what a failed batch leaves open and keeps the rest', () => {
    const demands = [demand('o', 'box', 8, '2026-11-06')];
    const kept = { batch: 'B1', item: 'piece', quantity: D(72), readyDay: '2026-11-03', busy: [] };
    const failed = { ...kept, batch: 'B2', quantity: D(24) };
    expect(lines(planned(workshop(ITEMS, { begun: [kept, failed], demands })))).toEqual([
      ['box', '2026-11-06', '8', undefined],
    ]);
    expect(
      lines(planned(workshop(ITEMS, { begun: [kept], demands }))).find(
        ([item]) => item === 'piece',
      ),
    ).toEqual(['piece', '2026-11-05', '24', 1]);
  });
});

describe('what can’t be met', () => {
  const tight = workshop(ITEMS, {
    calendar: { closedWeekdays: [], closedDays: ['2026-11-03'], openDays: [] },
    demands: [demand('o', 'box', 20, '2026-11-04', { valuePerUnit: D(10) })],
  });

  it('says by how much and what stood in the way', () => {
    const made = planned(tight);
    expect(
      made.shortfalls.map(({ missing, lostValue }) => [missing.toString(), lostValue.toString()]),
    ).toEqual([['12', '120']]);
    expect(made.shortfalls[0]?.because).toContainEqual({ kind: 'moulds', subject: 'dome' });
  });

  it('prices the ways out, cheapest first, and each mends what it says', () => {
    const result = atOnce(
      waysOut(tight, planned(tight), {
        mouldPrice: new Map([['dome', D(15)]]),
        minutePrice: new Map([['people', D('0.50')]]),
      }),
    );
    if (!result.ok) throw new Error(result.refusal.detail);
    const ways = result.value;
    expect(ways.map(({ kind }) => kind)).toContain('send_fewer');
    const way = (kind: string) => {
      const found = ways.find((candidate) => candidate.kind === kind);
      return {
        ...found,
        cost: found?.cost.toString(),
        stillMissing: found?.stillMissing.toString(),
      };
    };
    // Ten trays would do, but eight hours are enough for nine of them and the ganache.
    expect(way('more_moulds')).toMatchObject({ count: 5, stillMissing: '2', cost: '95' });
    expect(way('deliver_later')).toMatchObject({ demand: 'o', stillMissing: '0', cost: '0' });
    expect(ways.find(({ kind }) => kind === 'open_closed_day')).toMatchObject({
      day: '2026-11-03',
    });
    expect([...ways].sort((a, b) => a.cost.comparedTo(b.cost)).map(({ cost }) => cost)).toEqual(
      ways.map(({ cost }) => cost),
    );
  });

  it('lets the cheaper order go short when only one can be met', () => {
    const made = planned(
      workshop(ITEMS, {
        demands: [
          demand('small', 'box', 8, '2026-11-03', { valuePerUnit: D(1) }),
          demand('dear', 'box', 8, '2026-11-03', { valuePerUnit: D(9) }),
        ],
      }),
    );
    expect(made.shortfalls.map((shortfall) => shortfall.demand)).toEqual(['small']);
  });

  it('says that a supplier can’t be there in time', () => {
    const made = plan(
      workshop([bought('dark', 5), ...ITEMS], {
        demands: [demand('o', 'piece', 24, '2026-11-05')],
      }),
    );
    expect(made.ok && made.value.shortfalls[0]?.because).toContainEqual({
      kind: 'lead_time',
      subject: 'dark',
    });
  });

  it('refuses a recipe that contains itself, and an order for nothing', () => {
    const circle = plan(
      workshop([packed('box', { box: 1 })], { demands: [demand('o', 'box', 1, '2026-11-05')] }),
    );
    expect(circle.ok ? '' : circle.refusal.code).toBe('plan-recipe-contains-itself');
    const nothing = plan(workshop(ITEMS, { demands: [demand('o', 'box', 0, '2026-11-05')] }));
    expect(nothing.ok ? '' : nothing.refusal.code).toBe('plan-quantity-unusable');
  });
});

it('lists what to buy by supplier in whole packs, and says what lies under a minimum order', () => {
  const made = planned(workshop(ITEMS, { demands: [demand('o1', 'box', 6, '2026-11-06')] }));
  const list = shoppingList(
    made.purchases,
    [
      {
        item: 'cream',
        supplier: 'dairy',
        leadDays: 1,
        packQuantity: D(1000),
        pricePerUnit: D('0.0042'),
      },
      {
        item: 'dark',
        supplier: 'house',
        leadDays: 3,
        packQuantity: D(5000),
        pricePerUnit: D('0.0098'),
      },
      {
        item: 'carton',
        supplier: 'house',
        leadDays: 3,
        packQuantity: D(50),
        pricePerUnit: D('0.80'),
      },
    ],
    new Map([['house', D(150)]]),
  );
  expect(
    list.map(({ supplier, orderBy, cost, belowMinimum }) => [
      supplier,
      orderBy,
      cost.toFixed(2),
      belowMinimum.toFixed(2),
    ]),
  ).toEqual([
    ['house', '2026-11-02', '89.00', '61.00'],
    ['dairy', '2026-11-04', '4.20', '0.00'],
  ]);
  expect(list[1]?.lines[0]).toMatchObject({
    item: 'cream',
    packs: 1,
    needed: D(360),
    ordered: D(1000),
  });
});
