import type { ItemCostView, LotCostView } from '@api/modules/pricing/costs.dto';
import type {
  ItemPriceView,
  ListedPriceView,
  PriceListAnswer,
} from '@api/modules/pricing/prices.dto';
import type { PricingSettingsView } from '@api/modules/pricing/pricing-settings.dto';
import type { WhatIfView } from '@api/modules/what-if/what-if.dto';
import { readPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';
import type { Kitchen } from '../../support/workshop/kitchen';
import { makeBatch, pricedKitchen } from './priced-kitchen';

let service: TestService;
let kitchen: Kitchen;
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await pricedKitchen(service);
}, 120_000);
afterAll(() => service.close());

const read = async <T>(path: string): Promise<T> =>
  (await service.as.auditor.get(path).expect(200)).body as T;
const cents = (amounts: readonly string[]): number =>
  amounts.reduce((sum, amount) => sum + Math.round(Number(amount) * 100), 0);

// By hand: a kg of ganache is 2.016 cream + 1.00 tea + 7.20 couverture, 12.00 work and 3.00 overhead
// (half an hour). A piece takes 5 g of it and 6 g of couverture, 0.60 work, 0.15 overhead. A box is
// four pieces, a carton and two minutes.
describe('cost as designed', () => {
  it('rolls ingredients, work and overhead up from the ganache to the box', async () => {
    const ganache = await read<ItemCostView>(`/items/${kitchen.ganache}/cost`);
    expect(ganache).toMatchObject({ per: 'kg', cost: '25.2160' });
    const piece = await read<ItemCostView>(`/items/${kitchen.piece}/cost`);
    expect(piece).toMatchObject({ per: 'pc', cost: '0.9481' });
    const box = await read<ItemCostView>(`/items/${kitchen.box}/cost`);
    expect(box.cost).toBe('5.5923');
    expect(box.waterfall.map(({ part }) => part)).toEqual([
      'shell',
      'filling',
      'packaging',
      'maker',
      'per_hour',
    ]);
    expect(cents(box.waterfall.map(({ amount }) => amount))).toBe(559);
    expect(box.waterfall.at(-1)?.to).toBe('5.59');
  });

  it('says which price is missing instead of taking it for free', async () => {
    const bare = await service.as.maker.post('/items', {
      name: 'Unpriced salt',
      kind: 'ingredient',
    });
    const answer = await service.as.auditor.get(`/items/${(bare.body as { id: string }).id}/cost`);
    expect(answer.status).toBe(409);
    expect(answer.body).toMatchObject({ type: '/problems/purchase-price-missing' });
  });
});

describe('prices', () => {
  it('proposes a price for the target margin, with an ending and the margin that is left', async () => {
    const settings = await read<PricingSettingsView>('/prices/settings');
    const { version, ...rest } = settings;
    await service.as.owner
      .put('/prices/settings', version, {
        ...rest,
        endings: ['0.50', '0.90'],
        endingStep: '1.00',
        endingDirection: 'up',
        marginFloorPercent: '50',
      })
      .expect(200);
    const price = await read<ItemPriceView>(`/items/${kitchen.box}/price?list=counter`);
    // 5.5923 / 0.40 = 13.9808 net, 16.777 gross, so 16.90; net 14.08; margin 1 − 5.5923/14.08.
    expect(price.exactNet).toBe('13.9808');
    expect(price.proposed).toMatchObject({
      gross: '16.90',
      net: '14.08',
      vat: '2.82',
      marginPercent: '60.28',
      markUpPercent: '151.77',
      pricePerKg: '384.09',
      unitPriceDuty: 'required',
      warning: null,
    });
    expect(price.current).toBeNull();
  });

  it('keeps a history with from-dates, and never changes what was set', async () => {
    const set = (price: string, fromDay: string) =>
      service.as.owner
        .post(`/items/${kitchen.box}/prices`, { list: 'counter', price, fromDay })
        .expect(201);
    await set('16.90', '2026-09-01');
    await set('18.90', '2026-12-01');
    await set('17.50', '2026-11-20');
    const history = await read<ListedPriceView[]>(`/items/${kitchen.box}/prices?list=counter`);
    expect(history.map(({ price, holds }) => [price, holds])).toEqual([
      ['18.9000', false],
      ['17.5000', true],
      ['16.9000', false],
    ]);
    const later = await read<ItemPriceView>(
      `/items/${kitchen.box}/price?list=counter&on=2026-12-01`,
    );
    expect(later.current).toMatchObject({ gross: '18.90', lowestBefore: '16.90' });
  });

  it('lets only the owner set prices, and only of what is sold', async () => {
    const body = { list: 'counter', price: '1', fromDay: '2026-11-25' };
    await service.as.seller.post(`/items/${kitchen.box}/prices`, body).expect(403);
    await service.as.owner.post(`/items/${kitchen.cream}/prices`, body).expect(422);
    await service.as.owner
      .post(`/items/${kitchen.box}/prices`, { ...body, price: '-1' })
      .expect(400);
  });

  it('says how many boxes earn a fixed cost back', async () => {
    // Net 14.58; without 0.86 of overhead a box costs 4.7323: 1000 / 9.8477 = 101.55.
    const answer = await read(`/items/${kitchen.box}/break-even?fixedCost=1000`);
    expect(answer).toMatchObject({ units: '102', netPrice: '14.5800' });
  });

  it('prints the list that it shows', async () => {
    const list = await read<PriceListAnswer>('/prices?list=counter');
    const row = list.rows.find(({ itemId }) => itemId === kitchen.box);
    expect(row).toMatchObject({
      cost: '5.5923',
      current: { gross: '17.50', fromDay: '2026-11-20' },
    });
    const pdf = await service.as.seller
      .get('/prices/list.pdf?list=counter&language=en')
      .expect(200);
    expect(pdf.headers['content-type']).toContain('application/pdf');
    const paper = readPdf(pdf.body as Buffer, 'price-list');
    expect(paper.pages[0]?.text).toContain('17.50');
    expect(paper.pages[0]?.text).toContain('44 g');
  });

  it('refuses a rule that can’t be met and an edit of something stale', async () => {
    const item = await read<{ version: number }>(`/items/${kitchen.box}`);
    const rule = {
      counterTargetKind: 'margin',
      counterTargetPercent: '100',
      tradeTargetKind: 'mark_up',
      tradeTargetPercent: '80',
      mixedAssortment: true,
    };
    const impossible = await service.as.owner.put(
      `/items/${kitchen.box}/price-rule`,
      item.version,
      rule,
    );
    expect(impossible.body).toMatchObject({ status: 422, type: '/problems/margin-out-of-range' });
    await service.as.owner
      .put(`/items/${kitchen.box}/price-rule`, item.version, {
        ...rule,
        counterTargetPercent: '65',
      })
      .expect(200);
    await service.as.owner
      .put(`/items/${kitchen.box}/price-rule`, item.version, {
        ...rule,
        counterTargetPercent: '65',
      })
      .expect(412);
  });
});

describe('cost as made', () => {
  it('takes what the lots really cost, the minutes really worked, and divides by good pieces', async () => {
    const cream = await kitchen.receive(kitchen.cream, '2000', { price: '9', useBy: '2026-12-20' });
    const couverture = await kitchen.receive(kitchen.couverture, '10000', { price: '160' });
    const tea = await kitchen.receive(kitchen.tea, '500', { price: '30' });
    const carton = await kitchen.receive(kitchen.carton, '100', { price: '80' });
    const ganache = await makeBatch(
      service,
      kitchen.ganache,
      [
        { lotCode: cream, quantity: '480' },
        { lotCode: tea, quantity: '20' },
        { lotCode: couverture, quantity: '600' },
      ],
      {
        outputs: [{ quantity: '1000' }],
        losses: [
          { kind: 'held_back', massGrams: '60', lotCode: tea },
          { kind: 'scrapings', massGrams: '40' },
        ],
        labourMinutes: '45',
      },
    );
    const pieces = await makeBatch(
      service,
      kitchen.piece,
      [
        { lotCode: couverture, quantity: '144' },
        { lotCode: ganache, quantity: '120' },
      ],
      {
        outputs: [{ quantity: '20', massGrams: '220' }],
        losses: [{ kind: 'rejects', pieces: 4 }],
        labourMinutes: '40',
      },
    );
    const boxes = await makeBatch(
      service,
      kitchen.box,
      [
        { lotCode: pieces, quantity: '20' },
        { lotCode: carton, quantity: '5' },
      ],
      { outputs: [{ quantity: '5' }] },
    );
    // By hand: ganache 2.16 + 1.20 + 9.60 + 18.00 + 4.50 = 35.46 a kg, of which the cast took 120 g;
    // couverture 2.304, work 16.00, overhead 4.00: 26.5592 for 20 good pieces. Five boxes: 4.00 of
    // cartons, and ten planned minutes, 4.00 + 1.00, because nobody booked any.
    const piece = await read<LotCostView>(`/lots/${pieces}/cost`);
    expect(piece).toMatchObject({ lotCost: '26.56', cost: '1.3280', assumedMinutes: [] });
    const box = await read<LotCostView>(`/lots/${boxes}/cost`);
    expect(box.lotCost).toBe('35.56');
    expect(box.cost).toBe('7.1118');
    expect(box.assumedMinutes).toHaveLength(1);
    expect(box.waterfall.some(({ category }) => category === 'loss')).toBe(true);
    expect(cents(box.waterfall.map(({ amount }) => amount))).toBe(711);
    const labour = box.comparison.find(({ category }) => category === 'labour');
    expect(labour).toMatchObject({ designed: '3.4400' });
    expect(box.margins).toMatchObject([
      { list: 'counter', netPrice: '14.5800', marginPercent: '51.22', warning: null },
    ]);
  });

  it('warns of a lot whose margin falls under the floor', async () => {
    expect(await read<LotCostView[]>('/prices/thin-margins')).toEqual([]);
    await service.as.owner
      .post(`/items/${kitchen.box}/prices`, { list: 'trade', price: '9.00', fromDay: '2026-11-25' })
      .expect(201);
    const [thin] = await read<LotCostView[]>('/prices/thin-margins');
    expect(thin?.margins.find(({ list }) => list === 'trade')?.warning).toContain('14.22');
  });
});

describe('what if', () => {
  const third = {
    name: 'couverture up by a third',
    changes: [{ kind: 'ingredient', nameContains: 'couverture', fraction: '1/3' }],
  };
  const wages = {
    name: 'wages',
    changes: [
      { kind: 'wage', percent: '10' },
      { kind: 'vat', productClass: 'filled', ratePercent: '5.5' },
    ],
  };

  it('answers for every box in one call, and changes nothing', async () => {
    const before = await read<ItemCostView>(`/items/${kitchen.box}/cost`);
    const answer = (
      await service.as.seller.post('/what-if', { scenarios: [third, wages] }).expect(200)
    ).body as WhatIfView;
    expect(answer.scenarios.map(({ name }) => name)).toEqual([
      'unchanged',
      'couverture up by a third',
      'wages',
    ]);
    const of = (index: number) =>
      answer.scenarios[index]?.outcomes.find(({ itemId }) => itemId === kitchen.box);
    // Four pieces hold 24 g and, in 20 g of ganache, 12 g of couverture: 36 g at 4.00 a kg more.
    expect(of(1)?.costChange).toBe('0.1440');
    expect(of(2)?.costChange).toBe('0.3440');
    expect(of(0)).toMatchObject({ net: '14.58', marginPercent: '61.64' });
    expect(of(2)?.net).toBe('16.59');
    expect(await read<ItemCostView>(`/items/${kitchen.box}/cost`)).toEqual(before);
  });

  it('keeps scenarios and lays them side by side', async () => {
    const save = async (scenario: object) =>
      (await service.as.maker.post('/what-if/scenarios', scenario).expect(201)).body as {
        id: string;
        version: number;
      };
    const [first, second] = [await save(third), await save(wages)];
    const compared = await read<WhatIfView>(
      `/what-if/compare?ids=${first.id},${second.id}&list=trade`,
    );
    expect(compared.scenarios).toHaveLength(3);
    await service.as.maker.put(`/what-if/scenarios/${first.id}`, 7, third).expect(412);
    await service.as.maker
      .put(`/what-if/scenarios/${first.id}`, first.version, {
        ...third,
        note: 'as the trade expects',
      })
      .expect(200);
    await service.as.maker.delete(`/what-if/scenarios/${second.id}`).expect(200);
    expect(await read<unknown[]>('/what-if/scenarios')).toHaveLength(1);
    await service.as.auditor.post('/what-if/scenarios', third).expect(403);
  });

  it.each([
    [{ kind: 'ingredient', nameContains: 'marble', percent: '10' }],
    [{ kind: 'ingredient', nameContains: 'couverture', fraction: '1/0' }],
    [{ kind: 'wage' }],
    [{ kind: 'loss' }],
    [{ kind: 'vat', productClass: 'filled' }],
  ])('refuses %j in words', async (change) => {
    const answer = await service.as.maker.post('/what-if', {
      scenarios: [{ name: 'x', changes: [change] }],
    });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ type: '/problems/not-valid' });
  });
});
